import { describe, expect, test } from 'vitest'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import { undoOf } from '#core/log/undo.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import {
  mendHandicapFacts,
  mendHoleFacts,
  mendNameFacts,
  mendPlayersTeeFacts,
  mendTeeFacts,
} from '#core/outing/acts-mend.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { settledOf } from '#core/outing/settled.ts'
import { must } from '#core/values/assert.ts'
import type { PlayerId, TeeId } from '#core/values/ids.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { autumnDay, plainWith } from '#tests/kit/plain-outing.ts'
import { outingOfState } from '#tests/kit/two-groups.ts'

const founding = makeOp([], 'desk', factsReplacing(emptyLog, factsOfPlain(plainWith())))
const before = foldOps(emptyLog, [founding])
const outing = outingOfState(before)

const [alder, white] = ['alder' as PlayerId, 'white' as TeeId]

function settledAfter(facts: readonly NewFact[]) {
  const op = makeOp([founding], 'desk', factsReplacing(before, facts))
  const after = outingOfState(foldOps(emptyLog, [founding, op]))
  return { settled: settledOf(after, resultsOf(after)), op }
}

const settledOfPlain = (change: Parameters<typeof plainWith>[0]) => {
  const whole = outingOfState(
    foldOps(emptyLog, [makeOp([], 'desk', factsReplacing(emptyLog, factsOfPlain(plainWith(change))))]),
  )
  return settledOf(whole, resultsOf(whole))
}

const holesWith = (hole: number, value: { par: number; index: number }) => ({
  ...autumnDay.course,
  holes: autumnDay.course.holes.map((each, place) => (place === hole - 1 ? value : each)),
})
const tee = must(outing.tees.get(white), 'the white tee')
const playersWith = (change: object) =>
  autumnDay.players.map(player => (player.id === 'alder' ? { ...player, ...change } : player))

/** What was put right on the way comes to what had been right from the start. */
const mends: readonly (readonly [string, readonly NewFact[], Parameters<typeof plainWith>[0]])[] = [
  [
    'a stroke index',
    mendHoleFacts(outing, 5, { par: 4, index: 18 }, null),
    { course: holesWith(5, { par: 4, index: 18 }) },
  ],
  ['a par', mendHoleFacts(outing, 5, { par: 5, index: 1 }, null), { course: holesWith(5, { par: 5, index: 1 }) }],
  [
    "one tee's own card",
    mendHoleFacts(outing, 5, { par: 5, index: 2 }, white),
    {
      course: {
        ...autumnDay.course,
        tees: [
          {
            ...autumnDay.course.tees[0],
            pars: autumnDay.course.holes.map(({ par }, place) => (place === 4 ? 5 : par)),
            indexes: autumnDay.course.holes.map(({ index }, place) => (place === 4 ? 2 : index)),
          },
        ],
      },
    },
  ],
  [
    'a handicap',
    mendHandicapFacts(alder, { kind: 'course-handicap', strokes: 20 }),
    { players: playersWith({ handicap: { courseHandicap: 20 } }) },
  ],
  ['a name', mendNameFacts(alder, 'Elder'), { players: playersWith({ name: 'Elder' }) }],
  ["a player's tee", mendPlayersTeeFacts(alder, null), { players: playersWith({ tee: undefined }) }],
  [
    'a tee',
    mendTeeFacts(white, { ...tee, ratings: { courseRatingTenths: 714, slope: 128, par: 72 } }),
    {
      course: {
        ...autumnDay.course,
        tees: [{ ...autumnDay.course.tees[0], ratings: { courseRating: 71.4, slope: 128, par: 72 } }],
      },
    },
  ],
]

describe('what is mended during the round', () => {
  test.each(mends)('%s comes to what had been right from the start, and no score moves', (_, facts, change) => {
    const { settled, op } = settledAfter(facts)
    expect(settled).toEqual(settledOfPlain(change))
    expect(op.facts.filter(({ key }) => key.includes('score'))).toEqual([])
    const scoresOf = ({ cards }: typeof settled) =>
      cards.map(({ ball, holes }) => [ball, holes.map(({ score }) => score)])
    expect(scoresOf(settled)).toEqual(scoresOf(settledOf(outing, resultsOf(outing))))
  })

  test.each(mends)('%s is one act that can be undone', (_, facts) => {
    const { op } = settledAfter(facts)
    const history = [founding, op]
    const undone = undoOf(foldOps(emptyLog, history), history, op)
    expect(undone.left).toEqual([])
    const again = makeOp(history, 'desk', [...undone.facts])
    const back = outingOfState(foldOps(emptyLog, [...history, again]))
    expect(settledOf(back, resultsOf(back))).toEqual(settledOf(outing, resultsOf(outing)))
  })

  test('a tee that is not there has no card to mend', () => {
    expect(mendHoleFacts(outing, 5, { par: 4, index: 1 }, 'red' as TeeId)).toEqual([])
  })
})
