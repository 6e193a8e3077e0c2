import { describe, expect, it } from 'vitest'
import { scoresOn } from '#core/card/settle-card.ts'
import { foldOps } from '#core/log/fold.ts'
import { type Fact, type Op, opIdOf } from '#core/log/op.ts'
import { closeGroupFacts } from '#core/outing/acts.ts'
import { makeKey, scoreKey } from '#core/outing/keys.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { Json } from '#core/values/json.ts'
import { makeOp } from '#tests/kit/histories.ts'
import {
  actAfter,
  alder,
  birch,
  groupA,
  groupB,
  outingOfState,
  outingWith,
  startOp,
  stateWith,
} from '#tests/kit/two-groups.ts'

const saying = (key: string, value: Json, device = 'fir', tick?: number): Op =>
  makeOp([startOp], device, [{ key, value, replaces: [] } satisfies Fact], tick)

const cardKey = (group: string, hole: number) => scoreKey({ group, ball: alder, hole, lap: 1, record: 'card' })

describe('what is newer than this version', () => {
  it('is named and left out', () => {
    const outing = outingWith([saying('weather', 'rain'), saying(cardKey('a', 1), { strokes: 4 }, 'oak')])
    expect(outing.newer).toEqual([cardKey('a', 1), 'weather'])
    expect(outing.cards.get(alder)?.scores.size).toBe(0)
  })

  it('leaves the value beside it that is known', () => {
    const outing = outingWith([saying(cardKey('a', 1), 4), saying(cardKey('a', 1), { strokes: 4 }, 'oak')])
    expect(outing.cards.get(alder)?.scores.get('1/1')).toMatchObject({ kind: 'one', score: 4 })
  })
})

describe('a fact with two values', () => {
  const names = [saying('title', 'Spring Day', 'fir', 9), saying('title', 'Summer Day', 'oak', 8)]

  it('goes on with the last by (tick, device, n) and stays marked', () => {
    const outing = outingWith(names)
    expect(outing.title).toBe('Spring Day')
    expect(outing.doubts.map(({ key, standings }) => [key, standings.map(({ value }) => value)])).toEqual([
      ['title', ['Summer Day', 'Spring Day']],
    ])
  })

  it('is none when both say the same', () => {
    expect(outingWith([saying('title', 'Spring Day', 'fir'), saying('title', 'Spring Day', 'oak')]).doubts).toEqual([])
  })

  it('closes a ball with the last of two closes, in doubt', () => {
    const close = makeKey('closeBall', { ball: alder })
    const outing = outingWith([
      saying(close, { scores: [[1, 1, 5]] }, 'fir', 9),
      saying(close, { scores: [[1, 1, 6]] }, 'oak', 8),
    ])
    expect(outing.cards.get(alder)?.scores.get('1/1')).toMatchObject({ kind: 'one', score: 5 })
    expect(outing.doubts.map(({ key }) => key)).toEqual([close])
  })
})

describe('a ball that moved', () => {
  const place = makeKey('place', { ball: alder })
  const moved = actAfter([], 'desk', [
    { key: place, value: { group: 'b', position: 2, elsewhere: [{ group: 'a', holes: [[1, 1]] }] } },
  ])

  it('counts what each group wrote for the holes that are its own', () => {
    const scores = [1, 2].flatMap(hole => [
      saying(cardKey('a', hole), 4, `fir${hole}`),
      saying(cardKey('b', hole), 5, `oak${hole}`),
    ])
    const outing = outingWith([moved, ...scores])
    const card = outing.cards.get(alder)
    expect(card && scoresOn(card, '1/1')).toEqual([4])
    expect(card && scoresOn(card, '2/1')).toEqual([5])
    expect(outing.stray.map(({ group, hole, value }) => [group, hole, value])).toEqual([
      ['b', 1, 5],
      ['a', 2, 4],
    ])
    expect(outing.groups.get(groupB)?.balls).toEqual([birch, alder])
  })
})

describe("a closed group's facts", () => {
  const order = makeKey('order', { group: groupA })
  const first = saying(
    order,
    [
      [2, 1],
      [1, 1],
    ],
    'fir',
  )
  const close = actAfter([first], 'desk', closeGroupFacts(stateWith([first]), groupA))

  it('stay as they were closed, and a later one is listed', () => {
    const later = makeOp([startOp, first, close], 'fir', [{ key: order, value: [[9, 1]], replaces: [opIdOf(first)] }])
    for (const ops of [
      [first, close, later],
      [later, close, first],
    ]) {
      const outing = outingOfState(foldOps(stateWith([]), ops))
      expect(outing.groups.get(groupA)?.round.map(({ hole }) => hole)).toEqual([2, 1])
      expect(outing.lateFacts.map(({ key, standing }) => [key, standing.value])).toEqual([[order, [[9, 1]]]])
    }
  })

  it('hold even when somebody takes them away', () => {
    const gone = makeOp([startOp, first, close], 'fir', [{ key: order, value: null, replaces: [opIdOf(first)] }])
    expect(
      outingWith([first, close, gone])
        .groups.get(groupA)
        ?.round.map(({ hole }) => hole),
    ).toEqual([2, 1])
  })
})

describe('the main game', () => {
  const game = (id: string, format: string, group: string | null): Op =>
    saying(makeKey('gameFormat', group === null ? { game: id } : { group, game: id }), format, id)

  it('is the first that counts own strokes, unless the outing names another', () => {
    expect(outingWith([game('a-match', 'singles-match', null)]).main).toBe('points')
    expect(outingWith([game('a-match', 'singles-match', null), saying('main', 'a-match')]).main).toBe('a-match')
    expect(outingWith([saying('main', 'no-such-game')]).main).toBe('points')
  })

  it("is never another group's own, and one id in two groups hides neither", () => {
    const outing = outingWith([game('points', 'stroke-play-gross', 'b'), game('aa', 'stableford', 'b')])
    expect(outing.games.map(({ id, group }) => [id, group])).toEqual([
      ['aa', 'b'],
      ['b/points', 'b'],
      ['points', null],
    ])
    expect(outing.main).toBe('points')
  })
})

it('names a setting that a game lacks, and fills in none', () => {
  const gone = actAfter([], 'desk', [{ key: makeKey('gameAllowance', { game: 'points' }), value: null }])
  const result = [...resultsOf(outingWith([gone])).games.values()][0]
  expect(result).toMatchObject({
    kind: 'gap',
    gaps: [{ code: 'setting missing', ball: null, setting: 'allowancePercent' }],
  })
})
