import { type OutcomeShares, sharesOf } from '#core/plan/aim/judged.ts'
import { type HoleSketch, middleOf, type Place } from '#core/plan/aim/sketch.ts'
import {
  type Assumptions,
  carryScales,
  type Difference,
  differenceOf,
  spreadScales,
  usualAssumptions,
} from '#core/plan/assumptions.ts'
import type { Golfer, GolferClub } from '#core/plan/golfer.ts'
import { classOf } from '#core/plan/spread/spread-model.ts'
import { bestLine } from './line-aim.ts'
import { type Situation, strokeWith } from './situation.ts'

/** A tee shot with a club on its best line. */
export interface TeeShot {
  readonly club: GolferClub
  /** Carry and roll; no farther than the middle of the green. */
  readonly totalYd: number
  readonly aim: Place
  /** Strokes to hole out, this one among them. */
  readonly expected: number
  /** What the same shot is worth straight down the line of play. */
  readonly straight: number
}

/** The clubs off the tee, best first, and what the driver costs or saves against the best of the others. */
export interface TeeClubs {
  readonly shots: readonly TeeShot[]
  /** What the driver costs more; below 0 it saves. Null without a driver or another club. */
  readonly driverAgainstLess: Difference | null
}

export function teeShot(
  golfer: Golfer,
  sketch: HoleSketch,
  lengthYd: number,
  club: GolferClub,
  assumed: Assumptions,
): TeeShot {
  const totalYd = Math.min(lengthYd, club.carryYd * assumed.carryScale + club.rollYd)
  const at = onTee(golfer, sketch, lengthYd)
  return { club, totalYd, ...bestLine(strokeWith(at, club, totalYd, assumed), totalYd - lengthYd) }
}

const onTee = (golfer: Golfer, sketch: HoleSketch, lengthYd: number): Situation => ({
  golfer,
  sketch,
  pin: middleOf(sketch.green),
  distanceYd: lengthYd,
  lie: 'tee',
})

/** Where a tee shot ends up, in shares. */
export const teeShares = (golfer: Golfer, sketch: HoleSketch, lengthYd: number, shot: TeeShot): OutcomeShares =>
  sharesOf(strokeWith(onTee(golfer, sketch, lengthYd), shot.club, shot.totalYd, usualAssumptions), shot.aim)

/** The longest club of each class: driver, wood, hybrid, iron. */
export function teeClubsOf({ clubs }: Golfer): readonly GolferClub[] {
  const longest = new Map<string, GolferClub>()
  for (const each of clubs) {
    const known = longest.get(classOf(each.club))
    if (known === undefined || known.carryYd < each.carryYd) longest.set(classOf(each.club), each)
  }
  return [...longest.values()]
}

export function teeClubs(golfer: Golfer, sketch: HoleSketch, lengthYd: number): TeeClubs {
  const shots = teeClubsOf(golfer)
    .map(club => teeShot(golfer, sketch, lengthYd, club, usualAssumptions))
    .sort((a, b) => a.expected - b.expected)
  const driver = shots.find(({ club }) => club.club === 'driver')
  const less = shots.find(({ club }) => club.club !== 'driver')
  if (driver === undefined || less === undefined) return { shots, driverAgainstLess: null }
  const varied = variations.map(change => {
    const assumed = { ...usualAssumptions, ...change }
    const worth = ({ club }: TeeShot): number => teeShot(golfer, sketch, lengthYd, club, assumed).expected
    return worth(driver) - worth(less)
  })
  return { shots, driverAgainstLess: differenceOf(driver.expected - less.expected, varied) }
}

/** What the answer must stand: every spread and every carry a little off. */
const variations: readonly Partial<Assumptions>[] = [
  ...spreadScales.map(spreadScale => ({ spreadScale })),
  ...carryScales.map(carryScale => ({ carryScale })),
]
