import { describe, expect, test } from 'vitest'
import { formatAims, parseAims, proposedTargets, withTarget } from '#client/screens/hole/own/aims.ts'
import { strokesOver } from '#client/screens/hole/strokes-here.ts'
import { levelsOf } from '#core/outing/levels.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { must } from '#core/values/assert.ts'
import { outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'
import { ball, hole } from '#tests/kit/played-game.ts'

const outing = outingOfPlain(plainWith({ scores: [] }))
const results = resultsOf(outing)
const aims = { targets: [14, 13, 16, 13, 16, 14], cue: 'Middle of every green.' }

describe('the six targets', () => {
  test('are proposed as the level of each three: par plus the strokes of the main game', () => {
    // Course Handicap 14 at Quillmoor: pars 12, 11, 13, 11, 13, 12 and strokes on indexes 1 to 14.
    expect(proposedTargets(must(results.cards.get(ball('alder')), 'Alder has a card'))).toEqual([
      14, 13, 16, 13, 16, 14,
    ])
  })

  test('move by a stroke and stay in their range', () => {
    expect(withTarget(aims, 1, 14).targets).toEqual([14, 14, 16, 13, 16, 14])
    expect(withTarget(aims, 0, 2).targets[0]).toBe(3)
    expect(withTarget(aims, 0, 61).targets[0]).toBe(60)
  })

  test('come back as they were kept, and nothing else does', () => {
    const kept = new Map([[ball('alder'), aims]])
    expect(parseAims(formatAims(kept))).toEqual(kept)
    for (const text of [null, '', '{', '{}', '[["alder"]]', '[["alder",{"targets":[2],"cue":""}]]', '[[1,{}]]']) {
      expect(parseAims(text), String(text)).toEqual(new Map())
    }
  })
})

describe('strokes over the next three', () => {
  test('have a line a game, and one where all games agree', () => {
    const over = (player: string, holes: readonly number[]) =>
      strokesOver(
        outing,
        levelsOf(outing).prepared,
        ball(player),
        holes.map(each => hole(each)),
      )
    expect(over('alder', [7, 8, 9])).toEqual([
      { words: 'match', byHole: [1, 0, 0] },
      { words: 'points', byHole: [1, 1, 1] },
    ])
    expect(over('cedar', [4, 5, 6])).toEqual([
      { words: 'match', byHole: [1, 1, 0] },
      { words: 'points', byHole: [1, 2, 1] },
    ])
    // Rowan: 4 strokes in the match (indexes 1 to 4), 11 for points.
    expect(over('rowan', [16, 17, 18])).toEqual([{ words: 'points', byHole: [0, 1, 0] }])
  })
})
