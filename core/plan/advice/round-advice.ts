import type { Golfer } from '#core/plan/golfer.ts'
import { type CourseStrength, expectedScores } from '#core/plan/score/length-formulas.ts'
import { type HoleAdvice, holeAdvice, type KnownHole } from './hole-advice.ts'

/** What a hole is worth to a player. */
export interface HoleWorth {
  /** In strokes, on average. */
  readonly expected: number
  /** The whole score nearest to that, over par: 0 par is level here, 1 bogey, 2 double bogey. */
  readonly levelToPar: number
}

export interface PlannedHole extends HoleAdvice {
  readonly worth: HoleWorth
}

/** What every hole is worth, by the official length formulas; unofficial. `rated` is the course's rating from the tee. */
export function worthOf(golfer: Golfer, holes: readonly KnownHole[], rated: CourseStrength | null): HoleWorth[] {
  const { handicapIndex, gender } = golfer
  const lengthsYd = holes.map(({ lengthYd }) => lengthYd)
  return expectedScores(lengthsYd, handicapIndex, gender, rated).map((expected, at) => ({
    expected,
    levelToPar: Math.floor(expected - (holes[at]?.par ?? 0) + 0.5),
  }))
}

/** The plan of a round: each hole by itself, with what it is worth. */
export function roundAdvice(
  golfer: Golfer,
  holes: readonly KnownHole[],
  rated: CourseStrength | null,
  favouriteYd: number | null,
): PlannedHole[] {
  const worth = worthOf(golfer, holes, rated)
  return holes.map((hole, at) => ({
    ...holeAdvice(golfer, hole, favouriteYd),
    worth: worth[at] ?? { expected: hole.par, levelToPar: 0 },
  }))
}
