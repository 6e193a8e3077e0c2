import { describe, expect, it } from 'vitest'
import { foldOps } from '#core/log/fold.ts'
import { undoOf } from '#core/log/undo.ts'
import { factsReplacing, type NewFact, scoreFact } from '#core/outing/acts.ts'
import {
  agreeHoleFacts,
  agreeResultFacts,
  concedeHoleFacts,
  concedeMatchFacts,
  concedeStrokeFacts,
  pressFacts,
  rulingOnConcession,
} from '#core/outing/acts-match.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { makeKey } from '#core/outing/keys.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { BallId, GameId, GroupId } from '#core/values/ids.ts'
import { foldAll, makeOp } from '#tests/kit/histories.ts'
import { plainWith } from '#tests/kit/plain-outing.ts'
import { outingOfState } from '#tests/kit/two-groups.ts'

const [alder, birch, cedar] = ['alder', 'birch', 'cedar'] as BallId[] as [BallId, BallId, BallId]
const match = 'match' as GameId
const four = 'four' as GroupId
const hole = (number: number) => ({ hole: number, lap: 1 })

/** A match of pairs with no score written, and what these acts make of it one after the other. */
function playedAfter(...acts: readonly (readonly NewFact[])[]) {
  const start = makeOp(
    [],
    'desk',
    factsOfPlain(plainWith({ scores: [] })).map(fact => ({ ...fact, replaces: [] })),
  )
  const ops = [start]
  for (const facts of acts) ops.push(makeOp(ops, 'fir', factsReplacing(foldAll(ops), facts)))
  const state = foldAll(ops)
  const outing = outingOfState(state)
  return { ops, state, outing, results: resultsOf(outing), said: outing.notes.ofGames.get(match) }
}

/** The whole of hole 1 written: alder and cedar against birch and rowan. */
const holeOne = (['alder', 'birch', 'cedar', 'rowan'] as BallId[]).map(ball =>
  scoreFact({ group: four, ball, ...hole(1), record: 'card', score: 5 }),
)

describe('a concession', () => {
  it('of a stroke, a hole or the match is heard in its game', () => {
    const { outing, results } = playedAfter()
    const { said } = playedAfter(
      concedeStrokeFacts(outing, results, { game: match, ball: cedar, ...hole(2), score: 5 }),
      concedeHoleFacts(outing, results, { game: match, by: birch, to: alder, ...hole(3) }),
      concedeMatchFacts(outing, results, { game: match, by: birch, to: null }),
    )
    expect(said).toMatchObject({
      strokeConcessions: [{ ball: cedar, hole: '2/1', score: 5 }],
      holeConcessions: [{ by: birch, to: alder, hole: '3/1' }],
      matchConcessions: [{ by: birch, to: null }],
    })
  })

  it('of a hole that its scores have decided is none (Rules of Golf 3.2b(2))', () => {
    const { outing, results } = playedAfter(holeOne)
    const given = { game: match, by: birch, to: alder, ...hole(1) }
    expect(rulingOnConcession(results, 'hole', { ...given, at: given })).toEqual({
      isValid: false,
      reason: 'hole-already-decided',
    })
    expect(concedeHoleFacts(outing, results, given)).toEqual([])
    expect(concedeStrokeFacts(outing, results, { game: match, ball: birch, ...hole(1), score: 5 })).toEqual([])
    expect(concedeHoleFacts(outing, results, { ...given, ...hole(2) })).toHaveLength(1)
    expect(concedeMatchFacts(outing, results, { game: match, by: birch, to: null })).toHaveLength(1)
  })

  it('of a match that is over is none', () => {
    const scores = plainWith().scores ?? []
    const facts = scores.flatMap(({ ball, holes }) =>
      holes.map((score, place) => scoreFact({ group: four, ball, ...hole(place + 1), record: 'card', score })),
    )
    const { outing, results } = playedAfter(facts)
    expect(concedeMatchFacts(outing, results, { game: match, by: birch, to: null })).toEqual([])
  })

  it('is for no game and no ball that is not here', () => {
    const { outing, results } = playedAfter()
    const given = { game: match, by: birch, to: null }
    expect(concedeMatchFacts(outing, results, { ...given, game: 'skins' as GameId })).toEqual([])
    expect(concedeMatchFacts(outing, results, { ...given, by: 'oak' as BallId })).toEqual([])
  })

  it('put down by mistake is taken back like any act', () => {
    const { outing, results } = playedAfter()
    const { ops, state } = playedAfter(concedeMatchFacts(outing, results, { game: match, by: birch, to: null }))
    const act = ops.at(-1) as (typeof ops)[number]
    const undone = makeOp(ops, 'fir', undoOf(state, ops, act).facts)
    expect(outingOfState(foldOps(state, [undone])).notes.ofGames.size).toBe(0)
  })
})

describe('what sides agree', () => {
  it('of a hole replaces what the same sides agreed before, by whichever ball they are named', () => {
    const { outing } = playedAfter()
    const first = agreeHoleFacts(outing, { game: match, ...hole(7), between: [alder, birch], won: alder })
    const second = agreeHoleFacts(playedAfter(first).outing, {
      game: match,
      ...hole(7),
      between: ['rowan' as BallId, cedar],
      won: null,
    })
    expect(playedAfter(first, second).said?.agreedHoles).toEqual([
      { group: four, hole: '7/1', between: ['rowan', 'cedar'], won: null },
    ])
  })

  it('of other sides on the same hole stays', () => {
    const games = ['alder', 'birch', 'cedar'].map(id => [id])
    const facts = [
      { key: makeKey('gameSides', { game: match }), value: games },
      { key: makeKey('gameFormat', { game: match }), value: 'singles-match' },
    ]
    const { outing } = playedAfter(facts)
    const first = agreeHoleFacts(outing, { game: match, ...hole(7), between: [alder, birch], won: alder })
    const second = agreeHoleFacts(playedAfter(facts, first).outing, {
      game: match,
      ...hole(7),
      between: [alder, cedar],
      won: null,
    })
    expect(playedAfter(facts, first, second).said?.agreedHoles.map(({ between }) => between)).toEqual([
      [alder, birch],
      [alder, cedar],
    ])
  })

  it('of the whole match is one result', () => {
    const { outing } = playedAfter()
    const first = agreeResultFacts(outing, { game: match, between: [alder, birch], won: birch, by: 3, left: 2 })
    const second = agreeResultFacts(playedAfter(first).outing, {
      game: match,
      between: [birch, alder],
      won: null,
      by: 0,
      left: 0,
    })
    expect(playedAfter(first, second).said?.agreedResults).toEqual([
      { group: four, between: [birch, alder], won: null, by: 0, left: 0 },
    ])
  })
})

it('a press opens with the side that asks', () => {
  const { outing } = playedAfter()
  expect(playedAfter(pressFacts(outing, { game: match, by: birch, ...hole(6) })).said?.presses).toEqual([
    { by: birch, from: '6/1' },
  ])
})

it("a group's own game is named in its keys as the group named it", () => {
  const own = (group: string) => ({ key: makeKey('gameFormat', { group, game: 'own' }), value: 'singles-match' })
  const { outing, results } = playedAfter([own('four'), own('two')])
  const [fact] = concedeMatchFacts(outing, results, { game: 'four/own' as GameId, by: birch, to: null })
  expect(fact?.key).toBe('g/four/conceded-match/own/birch')
  expect(concedeMatchFacts(outing, results, { game: 'two/own' as GameId, by: birch, to: null })).toEqual([])
})
