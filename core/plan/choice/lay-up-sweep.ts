import type { Place } from '#core/plan/aim/sketch.ts'
import {
  type Assumptions,
  type Difference,
  differenceOf,
  spreadScales,
  usualAssumptions,
} from '#core/plan/assumptions.ts'
import { clubForYd, type GolferClub } from '#core/plan/golfer.ts'
import { bestLine } from './line-aim.ts'
import { type Situation, strokeWith } from './situation.ts'

/** A shot that leaves a number. */
export interface LayUpShot {
  readonly leavesYd: number
  readonly club: GolferClub
  readonly aim: Place
  readonly expected: number
}

/** Numbers to leave that are tried: close ones too, which the tables favour where the ground is clear. */
const [leastLeftYd, mostLeftYd, apartYd] = [30, 150, 10]

/** The shot that leaves so much, with the best line; null where no club carries it or none is needed. */
export function layUpLeaving(at: Situation, leavesYd: number, assumed: Assumptions): LayUpShot | null {
  const lengthYd = at.distanceYd - leavesYd
  const club = lengthYd <= 0 ? null : clubForYd(at.golfer, at.lie, lengthYd, assumed.carryScale)
  if (club === null) return null
  const { aim, expected } = bestLine(strokeWith(at, club, lengthYd, assumed), at.pin.beyondYd - leavesYd)
  return { leavesYd, club, aim, expected }
}

/** Every number in reach with what it is worth, from near the green to far. */
export function layUpSweep(at: Situation, assumed: Assumptions): LayUpShot[] {
  const numbers = Array.from(
    { length: (mostLeftYd - leastLeftYd) / apartYd + 1 },
    (_, by) => leastLeftYd + by * apartYd,
  )
  return numbers.flatMap(leavesYd => layUpLeaving(at, leavesYd, assumed) ?? [])
}

/** The number worth most; of equal ones the nearest to the green. */
export const bestLayUp = (sweep: readonly LayUpShot[]): LayUpShot | null =>
  sweep.reduce<LayUpShot | null>((best, each) => (best && best.expected <= each.expected ? best : each), null)

/** A favourite number against the best of the others. */
export interface FavouriteFigures {
  readonly favourite: LayUpShot
  readonly best: LayUpShot
  /** What the favourite costs more, a shot. */
  readonly cost: Difference
}

/** Null where the favourite number is out of reach, or nearer than it already. */
export function favouriteAgainst(at: Situation, favouriteYd: number): FavouriteFigures | null {
  const favourite = layUpLeaving(at, favouriteYd, usualAssumptions)
  const best = bestLayUp(layUpSweep(at, usualAssumptions))
  if (favourite === null || best === null) return null
  const costs = spreadScales.map(spreadScale => {
    const assumed = { ...usualAssumptions, spreadScale }
    const worth = (leavesYd: number): number => layUpLeaving(at, leavesYd, assumed)?.expected ?? Number.NaN
    return worth(favouriteYd) - worth(best.leavesYd)
  })
  return { favourite, best, cost: differenceOf(favourite.expected - best.expected, costs) }
}
