import { describe, expect, it } from 'vitest'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { settledOf } from '#core/outing/settled.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { autumnDay, gameIn, outingOfPlain, plainWith, settledWith } from '#tests/kit/plain-outing.ts'
import { outingOfState } from '#tests/kit/two-groups.ts'

/** Printed by a club for Great Britain and Ireland, April 2024: Index 20.1, slope 120, rating 69.8, par 71 make 20. */
const white = { courseRating: 69.8, slope: 120, par: 71 }
const front = { courseRating: 34.8, slope: 122, par: 36 }
/** 1.7 harder than the white tee, of the same par. */
const blue = { courseRating: 71.5, slope: 120, par: 71 }
const dayWith = (methods: object, change: object = {}) => ({
  course: {
    ...autumnDay.course,
    tees: [
      { id: 'white', name: 'White', ratings: white, frontRatings: front },
      { id: 'blue', name: 'Blue', ratings: blue },
    ],
  },
  players: autumnDay.players.map((player, place) => ({
    ...player,
    tee: place === 0 ? 'white' : 'blue',
    handicap: { index: 20.1 },
  })),
  games: [{ id: 'g', format: 'stroke-play-net', sides: [['alder'], ['birch']], allowance: 100, ...methods }],
  main: 'g',
  scores: [],
  ...change,
})
const without = { courseHandicap: 'without-rating-minus-par' }
const strokesIn = (methods: object, change: object = {}) =>
  gameIn(settledWith(dayWith(methods, change)), 'g', 'total').strokes

describe('the Course Handicap that a game names', () => {
  it('holds rating minus par unless somebody says otherwise', () => {
    const [alder] = strokesIn({})
    // 20.1 x 120 / 113 + 69.8 - 71 = 20.145
    expect(alder).toMatchObject({ courseHandicap: { unrounded: '20.145133', rounded: 20 }, playingHandicap: 20 })
  })

  it('leaves it out where the game says so: Great Britain and Ireland until March 2024', () => {
    const [alder] = strokesIn(without)
    expect(alder).toMatchObject({ courseHandicap: { unrounded: '21.345133', rounded: 21 }, playingHandicap: 21 })
  })

  it('is half the Index by the slope of the nine over nine holes', () => {
    const nine = { length: 9, course: { ...dayWith({}).course, holes: autumnDay.course.holes.slice(0, 9) } }
    // 10.05 x 122 / 113 = 10.850; with 34.8 - 36 it is 9.650.
    expect(strokesIn(without, nine)[0]?.courseHandicap?.unrounded).toBe('10.850442')
    expect(strokesIn({}, nine)[0]?.courseHandicap?.unrounded).toBe('9.650442')
  })

  it('then has what a tee is harder by added after the allowance, a half upward', () => {
    // 71.5 - 69.8 = 1.7, so two; with rating minus par it is in the handicap already and the pars are alike.
    expect(strokesIn(without).map(({ strokes, forTeePar }) => [strokes, forTeePar])).toEqual([
      [21, 0],
      [23, 2],
    ])
    expect(strokesIn({}).map(({ strokes, forTeePar }) => [strokes, forTeePar])).toEqual([
      [20, 0],
      [22, 0],
    ])
  })

  it('is of rating minus par where results are recorded against par', () => {
    const tees = dayWith({}).course.tees.map(tee =>
      tee.id === 'blue' ? { ...tee, ratings: { ...blue, par: 72 } } : tee,
    )
    const course = { ...dayWith({}).course, tees }
    // -0.5 against -1.2 is 0.7 more, so one; as strokes 1.7, so two.
    expect(strokesIn({ ...without, format: 'stableford' }, { course })[1]?.forTeePar).toBe(1)
    expect(strokesIn(without, { course })[1]?.forTeePar).toBe(2)
  })

  it('shares the difference between partners who play one ball: half of their sum', () => {
    const change = {
      balls: [
        { id: 'ab', players: ['alder', 'birch'] },
        { id: 'cr', players: ['cedar', 'rowan'] },
      ],
      groups: [{ id: 'four', name: 'Group', balls: ['ab', 'cr'] }],
    }
    const methods = { ...without, format: 'foursomes-stroke-play', allowance: undefined, sides: [['ab'], ['cr']] }
    // Half of 0 + 1.7 is 0.85, so one; half of 1.7 + 1.7 is 1.7, so two. Half of 2 x 21.345 is 21.345.
    expect(strokesIn(methods, change).map(({ playingHandicap, forTeePar }) => [playingHandicap, forTeePar])).toEqual([
      [22, 1],
      [23, 2],
    ])
  })

  it('adds nothing while a tee of the field has no rating', () => {
    const players = dayWith({}).players.map((player, place) =>
      place === 1 ? { ...player, tee: undefined, handicap: { courseHandicap: 20 } } : player,
    )
    expect(strokesIn(without, { players }).map(({ forTeePar }) => forTeePar)).toEqual([0, 0])
  })

  it('is with rating minus par in a game stored before there was a choice', () => {
    const facts = factsOfPlain(plainWith(dayWith({}))).filter(({ key }) => !key.endsWith('/course-handicap'))
    const op = makeOp(
      [],
      'desk',
      facts.map(fact => ({ ...fact, replaces: [] })),
    )
    const outing = outingOfState(foldOps(emptyLog, [op]))
    const game = gameIn(settledOf(outing, resultsOf(outing)), 'g', 'total')
    expect(game.strokes[0]?.courseHandicap?.unrounded).toBe('20.145133')
    expect(game.settings.courseHandicap).toBe('with-rating-minus-par')
    const plain = plainOf(outing)
    expect(plain?.games?.[0]?.courseHandicap).toBe('with-rating-minus-par')
    // What a missing one means is written nowhere: a server of the version before knows no such key.
    expect(plain && outingOfPlain(plain).games[0]?.methods.courseHandicap).toBeNull()
  })

  it('comes back from a plain file as it was written', () => {
    expect(plainOf(outingOfPlain(plainWith(dayWith(without))))?.games?.[0]?.courseHandicap).toBe(
      'without-rating-minus-par',
    )
  })

  it('caps the holes of the record too', () => {
    const of = (methods: object) =>
      settledWith(dayWith(methods)).handicapping.find(({ ball }) => ball === 'alder')?.courseHandicap
    expect([of({}), of(without)]).toEqual([20, 21])
  })
})
