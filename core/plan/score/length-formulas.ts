import { type RatedGender, slopeThousandthsPerStroke, standardSlope } from '#core/handicap/slope.ts'
import type { Evidence } from '#core/plan/evidence.ts'

/** A rating as a straight line in the course's length: strokes at no length, and yards that cost one stroke more. */
interface LengthLine {
  readonly atNothing: number
  readonly ydPerStroke: number
}

interface LengthFormulas extends Evidence {
  readonly scratch: LengthLine
  readonly bogey: LengthLine
  /** The Index of the bogey golfer for whom `bogey` stands. */
  readonly bogeyIndex: number
}

/** For eighteen holes without obstacles. Source: USGA Course Rating, second-hand in four agreeing copies. */
export const lengthFormulas: Readonly<Record<RatedGender, LengthFormulas>> = {
  men: {
    confidence: 'second-hand',
    source: 'length-formulas',
    scratch: { atNothing: 40.9, ydPerStroke: 220 },
    bogey: { atNothing: 50.7, ydPerStroke: 160 },
    bogeyIndex: 20,
  },
  women: {
    confidence: 'second-hand',
    source: 'length-formulas',
    scratch: { atNothing: 40.1, ydPerStroke: 180 },
    bogey: { atNothing: 51.3, ydPerStroke: 120 },
    bogeyIndex: 24,
  },
}

/** What a course of eighteen holes is rated, or would be by its length alone. */
export interface CourseStrength {
  readonly courseRating: number
  readonly slope: number
}

const holesOfRating = 18

const ratingAt = ({ atNothing, ydPerStroke }: LengthLine, lengthYd: number, holes: number): number =>
  (atNothing * holes) / holesOfRating + lengthYd / ydPerStroke

/** Source: the same formulas; an unofficial figure. */
export function strengthByLength(lengthYd: number, gender: RatedGender): CourseStrength {
  const { scratch, bogey } = lengthFormulas[gender]
  const courseRating = ratingAt(scratch, lengthYd, holesOfRating)
  const between = ratingAt(bogey, lengthYd, holesOfRating) - courseRating
  return { courseRating, slope: (between * slopeThousandthsPerStroke[gender]) / 1000 }
}

/** How much the scores of eighteen holes vary. Source: derived from the odds of exceptional scores, USGA Appendix E. */
export const sdOfRound = (handicapIndex: number): number => 2.75 + 0.075 * handicapIndex

/** By how many standard deviations the mean of twenty lies above that of its best eight: exact for normal scores. */
const meanAboveBestEight = 0.928

/** What eighteen holes come to on average, which is more than the Index. Source: derived; Rules of Handicapping 5.1, 5.2. */
export const expectedRound = (handicapIndex: number, { courseRating, slope }: CourseStrength): number =>
  courseRating + (handicapIndex * slope) / standardSlope + meanAboveBestEight * sdOfRound(handicapIndex)

/**
 * What each hole is worth to a golfer, in strokes: the length formulas mixed by Index, moved together until they come to
 * the expected round. Without a rating, or with other than eighteen holes, the length stands for the rating.
 * Source: derived from the length formulas.
 */
export function expectedScores(
  lengthsYd: readonly number[],
  handicapIndex: number,
  gender: RatedGender,
  rated: CourseStrength | null,
): number[] {
  const holes = lengthsYd.length
  const totalYd = lengthsYd.reduce((sum, each) => sum + each, 0)
  const strength =
    (holes === holesOfRating ? rated : null) ?? strengthByLength((totalYd * holesOfRating) / holes, gender)
  const { scratch, bogey, bogeyIndex } = lengthFormulas[gender]
  const weight = handicapIndex / bogeyIndex
  const byLength = lengthsYd.map(yd => (1 - weight) * ratingAt(scratch, yd, 1) + weight * ratingAt(bogey, yd, 1))
  const sum = byLength.reduce((total, each) => total + each, 0)
  const more = (expectedRound(handicapIndex, strength) * (holes / holesOfRating) - sum) / holes
  return byLength.map(strokes => strokes + more)
}
