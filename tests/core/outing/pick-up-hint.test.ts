import { describe, expect, it } from 'vitest'
import { pickUpFrom } from '#core/outing/pick-up-hint.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { BallId } from '#core/values/ids.ts'
import { autumnDay, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const [match = {}, points = {}] = autumnDay.games
const alone = [['alder'], ['birch'], ['cedar'], ['rowan']]
const game = (format: string, more = {}) => ({ id: format, format, sides: alone, allowance: 100, ...more })

/** From which score the hole is worth nothing; scores on hole 1 (par 4, index 7) alone, null where nobody has written. */
function from(ball: string, games: readonly object[], first: readonly (number | string | null)[] = []): number | null {
  const scores = ['alder', 'birch', 'cedar', 'rowan'].map((each, place) => ({
    ball: each,
    holes: [first[place] ?? null],
  }))
  const outing = outingOfPlain(plainWith({ games, main: undefined, scores }))
  return pickUpFrom(outing, resultsOf(outing), ball as BallId, { hole: 1, lap: 1 })
}

describe('the score from which a hole is worth nothing', () => {
  it('is net double bogey with Stableford points: a point needs net bogey (Rules of Golf 2023, rule 21.1b)', () => {
    // Course Handicaps 14, 7 and 21 on index 7: one stroke each. 4 + 1 + 2.
    expect(from('alder', [points])).toBe(7)
    expect(from('birch', [points])).toBe(7)
    // The same hole without a stroke.
    expect(from('birch', [game('stableford', { allowance: 50 })])).toBe(6)
  })

  it('is net bogey against par: the hole is lost with it (rule 21.3b)', () => {
    expect(from('alder', [game('par-bogey')])).toBe(6)
  })

  it.each(['stroke-play-gross', 'stroke-play-net'])(
    'is never told where every stroke counts: %s, beside points or alone',
    format => {
      expect(from('alder', [game(format)])).toBeNull()
      expect(from('alder', [game(format), points], [null, 4, 4, 4])).toBeNull()
    },
  )

  it('is never told with a maximum score', () => {
    expect(from('alder', [game('maximum-score-net', { maximumScore: 'net-double-bogey' })])).toBeNull()
  })

  it('waits in a match for a score of the other side', () => {
    expect(from('alder', [match])).toBeNull()
    // Off the lowest, Birch: Alder 7 strokes (one here), Rowan 4 (none on index 7).
    expect(from('alder', [match], [null, 4])).toBe(6)
    expect(from('alder', [match], [null, 4, null, 6])).toBe(6)
    expect(from('rowan', [match], [5, 4])).toBe(5)
  })

  it('is the highest of all games', () => {
    expect(from('alder', [match, points], [null, 4])).toBe(7)
    expect(from('alder', [match, points], [null, 7])).toBe(9)
    expect(from('alder', [match, points])).toBeNull()
  })

  it('leaves out a match that is over, and says nothing where nothing else is played', () => {
    const over = (games: readonly object[]): number | null => {
      const scores = ['alder', 'birch', 'rowan'].map(ball => ({
        ball,
        holes: Array(10).fill(ball === 'alder' ? 2 : 8),
      }))
      const outing = outingOfPlain(plainWith({ games, main: undefined, scores }))
      return pickUpFrom(outing, resultsOf(outing), 'alder' as BallId, { hole: 11, lap: 1 })
    }
    expect(over([match])).toBeNull()
    // Par 4, index 4, a stroke.
    expect(over([match, points])).toBe(7)
  })

  it('takes a skin away from nobody any more: one over the lowest net, since a tie keeps it from the other', () => {
    const skins = game('skins', { skins: 'carry-over' })
    expect(from('alder', [skins])).toBeNull()
    // Birch 4 with a stroke is 3 net: 4 net ties nothing. Alder has a stroke too.
    expect(from('alder', [skins], [null, 4])).toBe(5)
  })

  it('is not told where all scores of a hole share it out', () => {
    expect(from('alder', [game('nine-points', { sides: alone.slice(0, 3) })], [null, 4, 4])).toBeNull()
  })

  it('is not told of a ball that plays no game', () => {
    expect(from('alder', [])).toBeNull()
  })
})
