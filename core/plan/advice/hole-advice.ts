import { type BestAim, bestAim } from '#core/plan/aim/best-aim.ts'
import { type OutcomeShares, penaltyShare } from '#core/plan/aim/judged.ts'
import { type HoleSketch, middleOf, openHole, type Place } from '#core/plan/aim/sketch.ts'
import { type Difference, usualAssumptions } from '#core/plan/assumptions.ts'
import { bestLayUp, type LayUpShot, layUpLeaving, layUpSweep } from '#core/plan/choice/lay-up-sweep.ts'
import { ballOf, type Situation, strokeWith } from '#core/plan/choice/situation.ts'
import { teeClubs, teeShares } from '#core/plan/choice/tee-club.ts'
import { clubForYd, type Golfer, type GolferClub, longestFrom } from '#core/plan/golfer.ts'
import { type Misses, missesAt, type Trouble, troublesOf } from './miss.ts'

/** A hole as a player knows it; `sketch` is null where only par and length are known. */
export interface KnownHole {
  readonly hole: number
  readonly par: number
  readonly lengthYd: number
  readonly sketch: HoleSketch | null
}

/** A tee shot: the club, how far right to aim, and how often it takes a penalty stroke. */
export interface TeeAdvice {
  readonly club: GolferClub
  readonly aim: Place
  readonly totalYd: number
  readonly shares: OutcomeShares
  readonly penaltyShare: number
  /** Null on a hole of one shot, and without a driver or another club. */
  readonly driverAgainstLess: Difference | null
}

/** What to do next, from where the tee shot is meant to finish. */
export type NextAdvice =
  | { readonly kind: 'green'; readonly leavesYd: number; readonly club: GolferClub; readonly aim: BestAim }
  /** `best` leaves the number that is worth most, `favourite` the player's; null where out of reach or not chosen. */
  | {
      readonly kind: 'lay-up'
      readonly leavesYd: number
      readonly best: LayUpShot
      readonly favourite: LayUpShot | null
      /** What the favourite costs more, a shot; null without it. */
      readonly favouriteCost: number | null
    }
  /** Not even the longest club comes near: as far as it goes. */
  | { readonly kind: 'far'; readonly leavesYd: number; readonly club: GolferClub; readonly thenYd: number }
  /** The tee shot goes at the green, or the bag is empty. */
  | { readonly kind: 'none' }

export interface HoleAdvice {
  readonly hole: number
  /** Null with an empty bag. */
  readonly tee: TeeAdvice | null
  readonly next: NextAdvice
  readonly misses: Misses
  readonly troubles: readonly Trouble[]
}

/** The plan of one hole, with the pin taken in the middle: it is made before anybody knows better. */
export function holeAdvice(
  golfer: Golfer,
  { hole, lengthYd, par, sketch }: KnownHole,
  favouriteYd: number | null,
): HoleAdvice {
  const drawn = sketch ?? openHole(lengthYd)
  const pin = middleOf(drawn.green)
  const onTee: Situation = { golfer, sketch: drawn, pin, distanceYd: lengthYd, lie: 'tee' }
  const oneShot = par === 3 ? clubForYd(golfer, 'tee', lengthYd, 1) : null
  const tee = oneShot === null ? teeAdvice(onTee) : atGreen(onTee, oneShot)
  const leavesYd = tee === null ? lengthYd : lengthYd - tee.totalYd
  const next =
    tee === null || leavesYd <= 0
      ? { kind: 'none' as const }
      : nextAdvice({ ...onTee, distanceYd: leavesYd, lie: 'fairway' }, favouriteYd)
  return {
    hole,
    tee,
    next,
    misses: missesAt(drawn, pin, ballOf({ ...onTee, distanceYd: Math.max(leavesYd, 1) }), golfer.handicapIndex),
    troubles: troublesOf(drawn, lengthYd),
  }
}

function atGreen(at: Situation, club: GolferClub): TeeAdvice {
  const { best } = bestAim(strokeWith(at, club, at.distanceYd, usualAssumptions), at.sketch, at.pin)
  return {
    club,
    aim: best.aim,
    totalYd: at.distanceYd,
    shares: best.shares,
    penaltyShare: penaltyShare(best.shares),
    driverAgainstLess: null,
  }
}

function teeAdvice({ golfer, sketch, distanceYd }: Situation): TeeAdvice | null {
  const { shots, driverAgainstLess } = teeClubs(golfer, sketch, distanceYd)
  const [best] = shots
  if (best === undefined) return null
  const shares = teeShares(golfer, sketch, distanceYd, best)
  const { club, aim, totalYd } = best
  return { club, aim, totalYd, shares, penaltyShare: penaltyShare(shares), driverAgainstLess }
}

export function nextAdvice(at: Situation, favouriteYd: number | null): NextAdvice {
  const leavesYd = at.distanceYd
  const club = clubForYd(at.golfer, at.lie, leavesYd, 1)
  if (club !== null) {
    const stroke = strokeWith(at, club, leavesYd, usualAssumptions)
    return { kind: 'green', leavesYd, club, aim: bestAim(stroke, at.sketch, at.pin) }
  }
  const best = bestLayUp(layUpSweep(at, usualAssumptions))
  if (best === null) return asFarAsItGoes(at)
  const favourite = favouriteYd === null ? null : layUpLeaving(at, favouriteYd, usualAssumptions)
  const favouriteCost = favourite && Math.max(0, favourite.expected - best.expected)
  return { kind: 'lay-up', leavesYd, best, favourite, favouriteCost }
}

function asFarAsItGoes({ golfer, lie, distanceYd }: Situation): NextAdvice {
  const longest = longestFrom(golfer, lie)
  if (longest === null) return { kind: 'none' }
  return { kind: 'far', leavesYd: distanceYd, club: longest, thenYd: distanceYd - longest.carryYd }
}
