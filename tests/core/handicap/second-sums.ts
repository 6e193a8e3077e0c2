import { courseHandicap9, courseHandicap18 } from '#core/handicap/course-handicap.ts'
import {
  combineTwoNines,
  differentialTenths,
  type RatedScore,
  scoreDifferential18,
} from '#core/handicap/differential.ts'
import { averageDifferential, handicapIndex } from '#core/handicap/handicap-index.ts'
import { matchStrokes } from '#core/handicap/match-strokes.ts'
import { playingConditionsValues } from '#core/handicap/playing-conditions.ts'
import { playingHandicap } from '#core/handicap/playing-handicap.ts'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'
import { type Fraction, fraction, roundHalfUp } from '#core/values/fraction.ts'
import * as plain from '#tests/reference/plain-handicap.ts'
import type { Dice } from './dice.ts'

/** What one input gave: core's figures, the plain ones, and whether one of them lay exactly on a half before rounding. */
export interface Comparison {
  readonly input: unknown
  readonly ours: unknown
  readonly plainly: unknown
  readonly isHalf: boolean
}

const exactly = (value: Fraction): string => `${value.numerator}/${value.denominator}`

/** The plain figure in lowest terms, so that unrounded figures are compared to the last digit. */
function inLowestTerms({ over, under }: plain.Exact): string {
  let [a, b] = [over < 0n ? -over : over, under]
  while (b !== 0n) [a, b] = [b, a % b]
  return `${over / a}/${under / a}`
}

const ofSlope = (dice: Dice): number => (dice.isOneIn(3) ? 113 : dice.between(55, 155))
const percents = [100, 95, 90, 85, 75, 50, 60, 40]

/** A rating so near to par that, at the standard slope, the course handicap lies on a half as often as not. */
const ratingNear = (dice: Dice, par: number, indexTenths: number): number => {
  const rating = 10 * par + dice.between(-60, 60)
  return dice.isOneIn(2) ? rating : rating + ((15 - ((indexTenths + rating) % 10)) % 10)
}

function eighteenHoles(dice: Dice): Comparison {
  const index = dice.between(-60, 540)
  const [slope, par, percent] = [ofSlope(dice), dice.between(60, 76), dice.oneOf(percents)]
  const rating = ratingNear(dice, par, index)
  const ours = courseHandicap18(index, { courseRatingTenths: rating, slope, par })
  const plainly = plain.courseHandicap18(BigInt(index), BigInt(slope), BigInt(rating), BigInt(par))
  return handicapComparison({ index, slope, rating, par, percent }, ours, plainly, percent)
}

function nineHoles(dice: Dice): Comparison {
  const index = dice.between(-60, 540)
  const [slope, par, percent] = [ofSlope(dice), dice.between(27, 38), dice.oneOf(percents)]
  const isTenth = dice.isOneIn(2)
  const rating = ratingNear(dice, par, Math.floor(index / 2))
  const ratings = { courseRatingTenths: rating, slope, par }
  const ours = courseHandicap9(index, ratings, isTenth ? 'half-index-to-tenth' : 'half-index-unrounded')
  const plainly = plain.courseHandicap9(BigInt(index), BigInt(slope), BigInt(rating), BigInt(par), isTenth)
  return handicapComparison({ index, slope, rating, par, percent, isTenth }, ours, plainly, percent)
}

function handicapComparison(input: unknown, ours: Fraction, plainly: plain.Exact, percent: number): Comparison {
  const share = plain.share(plainly, BigInt(percent))
  const shareOfWhole = plain.share({ over: plain.halfUp(plainly), under: 1n }, BigInt(percent))
  return {
    input,
    ours: [
      exactly(ours),
      roundHalfUp(ours),
      playingHandicap(ours, percent, 'course-handicap-unrounded'),
      playingHandicap(ours, percent, 'course-handicap-rounded-first'),
    ],
    plainly: [inLowestTerms(plainly), ...[plainly, share, shareOfWhole].map(each => Number(plain.halfUp(each)))],
    isHalf: [plainly, share, shareOfWhole].some(plain.isHalf),
  }
}

function allocation(dice: Dice): Comparison {
  const holes = dice.shuffled(Array.from({ length: 18 }, (_, at) => at + 1)).slice(0, dice.oneOf([9, 18]))
  const strokes = dice.between(-30, 72)
  return {
    input: { holes, strokes },
    ours: allocateStrokes(strokes, holes),
    plainly: plain.allocate(BigInt(strokes), holes.map(BigInt)).map(Number),
    isHalf: false,
  }
}

function match(dice: Dice): Comparison {
  const percent = dice.oneOf(percents)
  const denominator = dice.oneOf([1, 2, 10, 20, 1130])
  const overs = Array.from({ length: dice.between(2, 4) }, () => dice.between(-4 * denominator, 54 * denominator))
  const handicaps = overs.map(over => fraction(over, denominator))
  const exact = overs.map(over => ({ over: BigInt(over), under: BigInt(denominator) }))
  const differences = [plain.matchFromUnrounded(exact, BigInt(percent)), plain.matchFromRounded(exact, BigInt(percent))]
  return {
    input: { overs, denominator, percent },
    ours: [
      matchStrokes('from-lowest-playing-handicap', handicaps, percent),
      matchStrokes('difference-of-unrounded-course-handicaps', handicaps, percent),
      matchStrokes('difference-of-rounded-course-handicaps', handicaps, percent),
    ],
    plainly: [
      plain.matchFromPlayingHandicaps(exact, BigInt(percent)).map(Number),
      ...differences.map(each => each.map(plain.halfUp).map(Number)),
    ],
    isHalf: differences.flat().some(plain.isHalf),
  }
}

/** With an even slope, an odd multiple of half of it over the rating gives an exact half of a tenth. */
function differential(dice: Dice): Comparison {
  const score = { ...anyScore(dice, 72), slope: dice.between(55, 155) }
  const isHalfWanted = score.slope % 2 === 0 && dice.isOneIn(2)
  const over = (score.slope / 2) * (2 * dice.between(-1, 3) + 1)
  const rating = 10 * (score.adjustedGross - score.playingConditions) - over
  return differentialComparison(isHalfWanted ? { ...score, courseRatingTenths: rating } : score)
}

function differentialComparison(score: RatedScore): Comparison {
  const ours = scoreDifferential18(score)
  const plainly = plain.differential18(...plainScore(score))
  return {
    input: score,
    ours: [exactly(ours), differentialTenths(ours)],
    plainly: [inLowestTerms({ over: plainly.over, under: 10n * plainly.under }), Number(plain.halfUp(plainly))],
    isHalf: plain.isHalf(plainly),
  }
}

function twoNines(dice: Dice): Comparison {
  const [first, second] = [anyScore(dice, 36), anyScore(dice, 36)]
  const ours = combineTwoNines(first, second)
  const plainly = plain.sum(plain.differential9(...plainScore(first)), plain.differential9(...plainScore(second)))
  return {
    input: { first, second },
    ours: [exactly(ours), differentialTenths(ours)],
    plainly: [inLowestTerms({ over: plainly.over, under: 10n * plainly.under }), Number(plain.halfUp(plainly))],
    isHalf: plain.isHalf(plainly),
  }
}

const anyScore = (dice: Dice, par: number): RatedScore => ({
  adjustedGross: par + dice.between(-8, 60),
  courseRatingTenths: 10 * par + dice.between(-60, 60),
  slope: dice.isOneIn(2) ? 113 : dice.between(55, 155),
  playingConditions: dice.oneOf(playingConditionsValues),
})

const plainScore = (score: RatedScore): [bigint, bigint, bigint, bigint] => [
  BigInt(score.adjustedGross),
  BigInt(score.courseRatingTenths),
  BigInt(score.slope),
  BigInt(score.playingConditions),
]

function record(dice: Dice): Comparison {
  const center = dice.between(-20, 520)
  const differentials = Array.from({ length: dice.between(3, 24) }, () => center + dice.between(-60, 60))
  const average = averageDifferential(differentials, 'from-three-scores')
  const plainly = plain.averageOfLowest(differentials.map(BigInt))
  return {
    input: differentials,
    ours: [average === null ? null : exactly(average), handicapIndex(differentials, 'from-three-scores')],
    plainly: [inLowestTerms(plainly), Number(plain.index(differentials.map(BigInt)))],
    isHalf: plain.isHalf(plainly),
  }
}

/** Every sum that is held against the plain one: each throws its own input. */
export const sums: Readonly<Record<string, (dice: Dice) => Comparison>> = {
  eighteenHoles,
  nineHoles,
  allocation,
  match,
  differential,
  twoNines,
  record,
}
