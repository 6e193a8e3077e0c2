import { describe, expect, it } from 'vitest'
import { ballHandicap } from '#core/formats/ball-handicap.ts'
import type { BallHandicap, PlayerHandicap } from '#core/formats/game-input.ts'
import { type GameMethods, noMethods } from '#core/formats/game-methods.ts'
import { fraction } from '#core/values/fraction.ts'
import type { PlayerId } from '#core/values/ids.ts'

const course = (numerator: number, denominator = 1): BallHandicap => ({
  kind: 'course',
  exact: fraction(numerator, denominator),
})
const player = (handicap: BallHandicap, parOfRound: number | null = 72): PlayerHandicap => ({
  player: 'p' as PlayerId,
  handicap,
  parOfRound,
  ratings: null,
})
const methods: GameMethods = {
  ...noMethods,
  handicapShares: [[60, 40]],
  mixedTees: 'one-tee-par',
  rounding: 'course-handicap-unrounded',
}

describe('what a ball plays off', () => {
  it("is its one player's handicap", () => {
    expect(ballHandicap([player(course(7))], noMethods, 'stroke-play')).toEqual(course(7))
    expect(ballHandicap([player({ kind: 'plain', strokes: 3 })], noMethods, 'stroke-play')).toEqual({
      kind: 'plain',
      strokes: 3,
    })
  })

  // Rules of Handicapping, Appendix C, 2024: 60 per cent of the lower and 40 of the higher, as a club prints it.
  it.each([
    [4, 8, course(56, 10)],
    [8, 4, course(56, 10)],
    [6, 11, course(8)],
  ])('is the shares of %i and %i, the lowest first whoever is named first', (one, other, expected) => {
    expect(ballHandicap([player(course(one)), player(course(other))], methods, 'stroke-play')).toEqual(expected)
  })

  it('takes whole course handicaps where the game rounds them first', () => {
    const partners = [player(course(9, 2)), player(course(8))]
    expect(ballHandicap(partners, methods, 'stroke-play')).toEqual(course(59, 10))
    expect(ballHandicap(partners, { ...methods, rounding: 'course-handicap-rounded-first' }, 'stroke-play')).toEqual(
      course(62, 10),
    )
  })

  // Club pages, 2024, second-hand: one tee's par for all, or each par and the difference to the lowest.
  it("across tees takes one tee's par, or the difference of the pars into the shares", () => {
    const partners = [player(course(10), 73), player(course(20), 71)]
    expect(ballHandicap(partners, methods, 'stroke-play')).toEqual(course(132, 10))
    expect(ballHandicap(partners, { ...methods, mixedTees: 'par-difference-in-shares' }, 'stroke-play')).toEqual(
      course(152, 10),
    )
  })

  it('takes plain strokes into the shares as they are', () => {
    const partners = [player({ kind: 'plain', strokes: 10 }, 73), player(course(20), 71)]
    expect(ballHandicap(partners, { ...methods, mixedTees: 'par-difference-in-shares' }, 'stroke-play')).toEqual(
      course(14),
    )
  })

  it.each([
    ['a setting', [player(course(1)), player(course(2))], { handicapShares: null }, 'setting missing'],
    ['a share each', [player(course(1)), player(course(2)), player(course(3))], {}, 'wrong sides'],
    ['a par', [player(course(1)), player(course(2), null)], {}, 'course incomplete'],
    ['a handicap', [player(course(1)), player({ kind: 'gap', code: 'rating missing' })], {}, 'rating missing'],
    ['a player', [], {}, 'handicap missing'],
  ])('names what it lacks: %s', (_, partners, change, code) => {
    expect(ballHandicap(partners, { ...methods, ...change }, 'stroke-play')).toEqual({ kind: 'gap', code })
  })
})
