import { describe, expect, it } from 'vitest'
import { type CardForm, type ReturnedHole, ruleOnReturnedHole } from '#core/formats/rulings/returned-score.ts'

const stableford: CardForm = { kind: 'stableford' }
const parBogey: CardForm = { kind: 'par-bogey' }
const capped: CardForm = { kind: 'maximum-score', maximum: { kind: 'net-double-bogey' } }
const strokePlay: CardForm = { kind: 'stroke-play' }
const forms = [strokePlay, stableford, parBogey, capped]

/** A par 4 with a stroke: 7 and 8 count nothing, are a lost hole, and are the cap of 7. */
const hole = (returned: number | null, actual: number, change: Partial<ReturnedHole> = {}): ReturnedHole => ({
  par: 4,
  strokes: 1,
  returned,
  actual,
  reason: 'other',
  isBeforeClose: true,
  ...change,
})

describe('a hole score returned wrong (Rules of Golf 3.3b(3) and the exceptions of 21.1 to 21.3)', () => {
  it.each(forms)('too high stands: $kind', form => {
    expect(ruleOnReturnedHole(form, hole(6, 5))).toEqual({ code: 'stands', score: 6 })
  })

  it('too low disqualifies in stroke play, even where other forms count the same', () => {
    expect(ruleOnReturnedHole(strokePlay, hole(7, 8))).toEqual({ code: 'disqualified' })
  })

  it.each([stableford, parBogey, capped])('too low without effect is no penalty: $kind', form => {
    expect(ruleOnReturnedHole(form, hole(7, 8))).toEqual({ code: 'stands', score: 7 })
  })

  it.each([stableford, capped])('too low with effect disqualifies: $kind', form => {
    expect(ruleOnReturnedHole(form, hole(5, 6))).toEqual({ code: 'disqualified' })
  })

  it('a hole of par/bogey won by 4 instead of 3 is won all the same, and one won instead of halved is not', () => {
    expect(ruleOnReturnedHole(parBogey, hole(3, 4))).toEqual({ code: 'stands', score: 3 })
    expect(ruleOnReturnedHole(parBogey, hole(4, 5))).toEqual({ code: 'disqualified' })
  })

  it('a penalty that the player did not know of is added before the close', () => {
    const unknown = { reason: 'unknown-penalty-stroke' } as const
    expect(ruleOnReturnedHole(stableford, hole(5, 6, unknown))).toEqual({ code: 'committee-adds-penalty', score: 6 })
    expect(ruleOnReturnedHole(stableford, hole(5, 6, { ...unknown, isBeforeClose: false }))).toEqual({
      code: 'stands',
      score: 5,
    })
  })

  it('a blank is no return of its hole, and disqualifies in stroke play', () => {
    expect(ruleOnReturnedHole(stableford, hole(null, 5))).toEqual({ code: 'no-return' })
    expect(ruleOnReturnedHole(strokePlay, hole(null, 5))).toEqual({ code: 'disqualified' })
  })
})
