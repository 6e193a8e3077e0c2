import { describe, expect, it } from 'vitest'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { faultsOfPlain } from '#core/outing/plain-faults.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import { resultsAfter, resultsOf } from '#core/outing/results-of.ts'
import { settledOf } from '#core/outing/settled.ts'
import { viewAfter, viewOf } from '#core/outing/view.ts'
import type { Json } from '#core/values/json.ts'
import { isKnownValue } from '#shared/facts.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { gameIn, outingOfPlain, settledWith } from '#tests/kit/plain-outing.ts'

/** The course of practice case TM-07. */
const pars = [4, 5, 3, 4, 4, 3, 4, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5, 4]
const indexes = [7, 3, 15, 11, 1, 17, 5, 13, 9, 8, 4, 16, 12, 2, 10, 18, 6, 14]
const blank = Array<null>(12).fill(null)
const names = ['a', 'b', 'c', 'k', 'l', 'm', 'n']
/** Rated at par with a slope of 113, so that an Index is the Course Handicap. */
const index: Readonly<Record<string, number>> = { a: 17.4, b: 26.3, c: 8.8 }
const out = 'picked-up'

const day = {
  course: {
    holes: pars.map((par, place) => ({ par, index: indexes[place] ?? 1 })),
    tees: [{ id: 't', name: 'White', ratings: { courseRating: 72, slope: 113, par: 72 } }],
  },
  players: names.map(id => ({ id, name: id.toUpperCase(), tee: 't', handicap: { index: index[id] ?? 0 } })),
  groups: [
    { id: 'one', name: 'One', balls: ['a', 'b', 'c'] },
    { id: 'two', name: 'Two', balls: ['k', 'l', 'm', 'n'] },
  ],
  scores: [
    { ball: 'a', holes: [...blank, 6, 5, 5, 4, 6, 4] },
    { ball: 'b', holes: [...blank, 7, 6, out, 5, 8, 5] },
    { ball: 'c', holes: [...blank, 5, 5, 4, 3, 6, 5] },
    { ball: 'k', holes: [...blank, 5, 4, 4, 2, 5, 4] },
  ],
  main: undefined,
}
const sides = [
  ['a', 'b', 'c'],
  ['k', 'l', 'm', 'n'],
]
const fileWith = (methods: object, change: object = {}) => ({
  ...day,
  games: [{ id: 'g', format: 'best-balls-stableford', sides, allowance: 100, countingBalls: [2], ...methods }],
  ...change,
})
const lineWith = (methods: object, change: object = {}) => {
  const { lines } = gameIn(settledWith(fileWith(methods, change)), 'g', 'total')
  const line = lines.find(({ side }) => side[0] === 'a')
  const values = line?.holes.slice(12).map(({ value }) => value) ?? []
  return { line, values, sum: values.reduce<number>((all, value) => all + (value ?? 0), 0) }
}

// Practice case TM-07: a par-three club's page on the method, second-hand.
describe('a team of three among teams of four', () => {
  it('has a ghost off the average of exact handicaps, with the strokes of its players by turns', () => {
    const { line, values, sum } = lineWith({ shortTeam: 'ghost-of-unrounded' })
    expect([line?.ghost, values, sum]).toEqual([18, [4, 4, 5, 4, 4, 5], 26])
  })

  it('has one off the average of whole handicaps where the terms say so', () => {
    const { line, sum } = lineWith({ shortTeam: 'ghost-of-rounded' })
    expect([line?.ghost, sum]).toEqual([17, 25])
  })

  it('has its own balls alone where the terms give it nothing', () => {
    for (const shortTeam of ['those-there', null]) {
      const { line, sum } = lineWith({ shortTeam })
      expect([line?.ghost, sum]).toEqual([null, 24])
    }
  })

  it('has the card that was drawn, which counts for its own team too (practice case TM-03)', () => {
    const { line, values } = lineWith({ shortTeam: 'drawn-card', drawnCard: 'k' })
    expect(line?.drawnCard).toBe('k')
    // K off none has two points on each of the six and three on the 16th: there alone the best two are more.
    expect(lineWith({}).values).toEqual([4, 4, 4, 3, 4, 5])
    expect(values).toEqual([4, 4, 4, 5, 4, 5])
    const two = gameIn(settledWith(fileWith({ shortTeam: 'drawn-card', drawnCard: 'k' })), 'g', 'total').lines
    const [full, none] = [two, gameIn(settledWith(fileWith({})), 'g', 'total').lines].map(lines =>
      lines.find(({ side }) => side[0] === 'k'),
    )
    expect(full?.holes).toEqual(none?.holes)
    expect(full?.drawnCard).toBeNull()
  })

  it('has none drawn yet, and none of its own', () => {
    const own = lineWith({}).values
    for (const drawnCard of [null, 'a']) {
      expect(lineWith({ shortTeam: 'drawn-card', drawnCard }).values).toEqual(own)
    }
  })

  it('is one whose fourth did not come', () => {
    const four = [
      ['a', 'b', 'c', 'n'],
      ['k', 'l', 'm'],
    ]
    const groups = [
      { id: 'one', name: 'One', balls: ['a', 'b', 'c', 'n'] },
      { id: 'two', name: 'Two', balls: ['k', 'l', 'm'] },
    ]
    const change = { groups, absences: [{ ball: 'n' }] }
    const { line, values } = lineWith({ shortTeam: 'ghost-of-unrounded', sides: four }, change)
    expect([line?.ghost, values]).toEqual([18, [4, 4, 5, 4, 4, 5]])
  })

  it('is none where it is two short, or where all teams are alike', () => {
    const pairs = [
      ['a', 'b'],
      ['k', 'l', 'm', 'n'],
    ]
    expect(lineWith({ shortTeam: 'ghost-of-unrounded', sides: pairs }).line?.ghost).toBeNull()
    const alike = [
      ['a', 'b', 'c'],
      ['k', 'l', 'm'],
    ]
    expect(lineWith({ shortTeam: 'ghost-of-unrounded', sides: alike }).line?.ghost).toBeNull()
  })

  it('has a ghost picked up where its player picked up, which is no return in strokes with four counting', () => {
    const strokes = { format: 'best-balls-stroke-play', shortTeam: 'ghost-of-unrounded', countingBalls: [4] }
    const { line } = lineWith(strokes)
    // On the 15th B picked up and is one of four that have to count.
    expect(line?.isNoReturn).toBe(true)
    const [, second] = lineWith({ ...strokes, countingBalls: [3] }).line?.holes.slice(13) ?? []
    expect(second?.kind).toBe('value')
  })

  it('comes back from a plain file as it was written, and names an unknown ball', () => {
    const methods = { shortTeam: 'drawn-card', drawnCard: 'k' }
    const file = { ...settledFile(fileWith(methods)) }
    expect(plainOf(outingOfPlain(file))?.games?.[0]).toMatchObject(methods)
    const wrong = settledFile(fileWith({ ...methods, drawnCard: 'oak' }))
    expect(faultsOfPlain(wrong)).toEqual([{ path: 'games[0].drawnCard', code: 'unknown ball' }])
  })

  it('is made new with a score of the card drawn, in another team', () => {
    const file = settledFile(fileWith({ shortTeam: 'drawn-card', drawnCard: 'k' }))
    const start = makeOp(
      [],
      'desk',
      factsOfPlain(file).map(fact => ({ ...fact, replaces: [] })),
    )
    const score: { key: string; value: Json } = { key: 'g/two/score/k/13/1/card', value: 2 }
    const id = `${start.device}.${start.n}`
    const later = makeOp([start], 'fir', [{ ...score, replaces: [id as never] }])
    const before = viewOf(foldOps(emptyLog, [start]), isKnownValue)
    const after = viewAfter(before, foldOps(before.state, [later]), isKnownValue)
    const whole = viewOf(foldOps(emptyLog, [start, later]), isKnownValue)
    const results = resultsOf(before.outing)
    const next = resultsAfter({ levels: before.levels, results }, after.levels)
    expect(next.games).toEqual(resultsOf(whole.outing).games)
    expect(settledOf(after.outing, next)).toEqual(settledOf(whole.outing, resultsOf(whole.outing)))
    expect(settledOf(after.outing, next).games).not.toEqual(settledOf(before.outing, results).games)
  })
})

const settledFile = (file: object): PlainOuting =>
  ({ sixThrees: 'outing', version: 1, form: 'plain', length: 18, ...file }) as unknown as PlainOuting
