import type { RatedGender } from '#core/handicap/slope.ts'
import { rollYd, usualCarryYd } from '#core/plan/spread/driver-distance.ts'
import {
  goodStrikeYd,
  type Measured,
  ownCarry,
  ownMishitShare,
  ownSd,
  ownSideBiasYd,
} from '#core/plan/spread/own-figures.ts'
import { classOf, type Spread, spreadOf } from '#core/plan/spread/spread-model.ts'
import { skillOf } from '#core/plan/strokes/skill.ts'
import type { Lie } from '#core/plan/strokes/stroke-table.ts'
import { yardsPerUnit } from '#core/values/length.ts'
import { enoughNumbers } from './bag.ts'
import { type Club, clubsInBag, isForTheTeeAlone } from './clubs.ts'
import type { Plan } from './plan.ts'

/** What a golfer measured with one club, mishits counted apart. */
export interface OwnShots {
  /** Carries in yards. */
  readonly carry: Measured
  /** Yards right of the aim. */
  readonly side: Measured
  readonly mishits: number
}

/** A club with the carry of a good strike. */
export interface GolferClub {
  readonly club: Club
  readonly carryYd: number
  readonly rollYd: number
  readonly isEstimated: boolean
  readonly own: OwnShots | null
}

/** All that the engine knows of a player, in yards. */
export interface Golfer {
  /** In strokes; negative for a plus Index. */
  readonly handicapIndex: number
  readonly gender: RatedGender
  /** Lowest-lofted first. */
  readonly clubs: readonly GolferClub[]
}

/** What a player says beside the bag. */
export interface GolferSays {
  readonly handicapIndex: number
  readonly gender: RatedGender
  /** Whether the carries in the bag are those of good strikes, or averages with the mishits in them. */
  readonly carriesAre: 'good-strike' | 'average'
  readonly own: ReadonlyMap<Club, OwnShots>
}

/**
 * A golfer from a bag in the player's unit. With too few numbers the rest come from the Index, by our own ladder under a
 * usual drive, and are marked as estimated.
 */
export function golferOf(plan: Plan, { handicapIndex, gender, carriesAre, own }: GolferSays): Golfer {
  const known = new Map(plan.bag.clubs.map(each => [each.club, each]))
  const isKnown = plan.bag.clubs.length >= enoughNumbers
  const mishitShare = spreadOf(
    { skill: skillOf(handicapIndex), clubClass: 'iron', lie: 'fairway', scale: 1 },
    0,
  ).mishitShare
  return {
    handicapIndex,
    gender,
    clubs: clubsInBag(plan).map(club => {
      const found = known.get(club)
      const saidYd =
        found &&
        (carriesAre === 'average' ? goodStrikeYd(inYards(plan, found.usual), mishitShare) : inYards(plan, found.usual))
      const usualYd = saidYd ?? usualCarryYd(club, handicapIndex, gender)
      return {
        club,
        carryYd: carryWithOwn(club, usualYd, handicapIndex, own.get(club) ?? null),
        rollYd: rollYd[classOf(club)],
        isEstimated: saidYd === undefined || !isKnown || (found?.isEstimated ?? true),
        own: own.get(club) ?? null,
      }
    }),
  }
}

const inYards = ({ unit }: Plan, amount: number): number => amount * yardsPerUnit(unit)

function carryWithOwn(club: Club, usualYd: number, handicapIndex: number, own: OwnShots | null): number {
  if (own === null) return usualYd
  const of = { skill: skillOf(handicapIndex), clubClass: classOf(club), lie: 'fairway', scale: 1 } as const
  return ownCarry(usualYd, own.carry, spreadOf(of, usualYd).lengthSdYd)
}

/** Where a golfer's shots with a club finish about what they are meant for: the default, moved by own shots. */
export function spreadWith(golfer: Golfer, club: GolferClub, lie: Lie, lengthYd: number, scale: number): Spread {
  const of = { skill: skillOf(golfer.handicapIndex), clubClass: classOf(club.club), lie, scale }
  const usual = spreadOf(of, lengthYd)
  if (club.own === null) return usual
  const full = spreadOf({ ...of, lie: 'fairway', scale: 1 }, club.carryYd)
  const { carry, side, mishits } = club.own
  return {
    sideSdYd: (usual.sideSdYd * ownSd(full.sideSdYd, side)) / full.sideSdYd,
    lengthSdYd: (usual.lengthSdYd * ownSd(full.lengthSdYd, carry)) / full.lengthSdYd,
    sideBiasYd: (ownSideBiasYd(side, full.sideSdYd) * lengthYd) / club.carryYd,
    mishitShare: ownMishitShare(usual.mishitShare, mishits, carry.shots + mishits),
  }
}

/** The clubs to choose from: a driver from the tee alone. */
const clubsFrom = ({ clubs: all }: Golfer, lie: Lie): readonly GolferClub[] =>
  lie === 'tee' ? all : all.filter(({ club }) => !isForTheTeeAlone(club))

/** The shortest club that carries so far, of two the higher-lofted; null where none does. */
export function clubForYd(golfer: Golfer, lie: Lie, carryYd: number, carryScale: number): GolferClub | null {
  return clubsFrom(golfer, lie)
    .filter(each => each.carryYd * carryScale >= carryYd)
    .reduce<GolferClub | null>((found, each) => (found && found.carryYd < each.carryYd ? found : each), null)
}

/** The club that carries farthest from a lie, of two the lower-lofted; null without one. */
export const longestFrom = (golfer: Golfer, lie: Lie): GolferClub | null =>
  clubsFrom(golfer, lie).reduce<GolferClub | null>(
    (found, each) => (found && found.carryYd >= each.carryYd ? found : each),
    null,
  )

/** How far a golfer can carry a ball from a lie, in yards; 0 without a club. */
export const longestCarryYd = (golfer: Golfer, lie: Lie): number => longestFrom(golfer, lie)?.carryYd ?? 0
