import type { Measured } from '#core/plan/spread/own-figures.ts'
import { fraction, plus, roundHalfUp, times } from '#core/values/fraction.ts'
import type { LengthUnit } from '#core/values/length.ts'
import { type Club, clubs, isForTheTeeAlone, ladderThousandths, type PartSwing } from './clubs.ts'
import { carryWithShots } from './own-shots.ts'

/** A club with how far it carries, a whole number in the player's unit. Roll is never counted. */
export interface BagClub {
  readonly club: Club
  /** With the player's own shots in it. */
  readonly carry: number
  /** What it would be without them, not rounded where it comes from them alone. */
  readonly usual: number
  /** True where the number is worked out from the others. */
  readonly isEstimated: boolean
  /** A part swing of the club; left out for a full one. */
  readonly part?: PartSwing
}

export interface Bag {
  /** Lowest-lofted first; each with a carry. */
  readonly clubs: readonly BagClub[]
  /** Part swings with a carry of their own. */
  readonly parts: readonly BagClub[]
  /** In the bag without a carry, for want of numbers to estimate it from. */
  readonly unknown: readonly Club[]
}

/** From so many numbers the rest of a bag is estimated. Our own. */
export const enoughNumbers = 3

/** What the player measured beside the numbers, in the player's unit. */
export interface OwnFigures {
  readonly unit: LengthUnit
  readonly measured: ReadonlyMap<Club, Measured>
  readonly parts: ReadonlyMap<Club, ReadonlyMap<PartSwing, number>>
}

const nothingMeasured: OwnFigures = { unit: 'yards', measured: new Map(), parts: new Map() }

/** A bag from what the player said: null for a club that is there without a number. */
export function bagOf(said: ReadonlyMap<Club, number | null>, own: OwnFigures = nothingMeasured): Bag {
  const known = clubs.flatMap(club => {
    const carry = said.get(club) ?? (said.has(club) ? meanOf(own, club) : null)
    return carry === null ? [] : [fullClub(club, carry)]
  })
  const withShots = known.map(each => clubWithShots(each, said, known, own))
  const open = clubs.filter(club => said.has(club) && !known.some(each => each.club === club))
  const parts = partsOf(said, own)
  if (known.length < enoughNumbers) return { clubs: withShots, parts, unknown: open }
  const guessed = open.map(club => ({ ...fullClub(club, estimatedCarry(club, known)), isEstimated: true }))
  const all = [...withShots, ...guessed]
  return { clubs: clubs.flatMap(club => all.find(each => each.club === club) ?? []), parts, unknown: [] }
}

const fullClub = (club: Club, carry: number): BagClub => ({ club, carry, usual: carry, isEstimated: false })

/** Shots alone are a number too. */
function meanOf({ measured }: OwnFigures, club: Club): number | null {
  const shots = measured.get(club)
  return shots === undefined || shots.shots === 0 ? null : wholeOf(shots.mean)
}

/** Own shots move the number that was typed; where none was, the one that the other clubs would give. */
function clubWithShots(
  { club, carry }: BagClub,
  said: ReadonlyMap<Club, number | null>,
  known: readonly BagClub[],
  { measured, unit }: OwnFigures,
): BagClub {
  const shots = measured.get(club)
  if (shots === undefined) return fullClub(club, carry)
  const others = known.filter(each => each.club !== club)
  const isTyped = (said.get(club) ?? null) !== null
  const usual = isTyped || others.length < enoughNumbers ? carry : estimatedCarry(club, others)
  return { ...fullClub(club, wholeOf(carryWithShots(club, usual, shots, unit))), usual }
}

const partsOf = (said: ReadonlyMap<Club, number | null>, { parts }: OwnFigures): readonly BagClub[] =>
  [...parts].flatMap(([club, ofClub]) =>
    said.has(club) ? [...ofClub].map(([part, carry]) => ({ ...fullClub(club, carry), part })) : [],
  )

/** A half upward, as every figure on a screen. */
const wholeOf = (carry: number): number => Math.floor(carry + 1 / 2)

/**
 * A carry by the ladder: on a straight line between the nearest clubs with a number on either side, beyond the last one
 * in proportion to it. Source: our own rule.
 */
function estimatedCarry(club: Club, known: readonly BagClub[]): number {
  const share = ladderThousandths[club]
  const byShare = [...known].sort((a, b) => shareOf(a) - shareOf(b))
  const longer = byShare.find(each => shareOf(each) >= share)
  const shorter = byShare.filter(each => shareOf(each) <= share).at(-1)
  if (longer === undefined || shorter === undefined) return inProportion(share, longer ?? shorter)
  const step = shareOf(longer) - shareOf(shorter)
  if (step === 0) return longer.carry
  const along = times(fraction(longer.carry - shorter.carry), fraction(share - shareOf(shorter), step))
  return roundHalfUp(plus(fraction(shorter.carry), along))
}

const shareOf = ({ club }: BagClub): number => ladderThousandths[club]

const inProportion = (share: number, last: BagClub | undefined): number =>
  last === undefined ? 0 : roundHalfUp(fraction(last.carry * share, shareOf(last)))

/** The clubs that are played off the ground, part swings among them. */
export const clubsOffTheGround = (bag: Bag): readonly BagClub[] =>
  swingsOf(bag).filter(({ club }) => !isForTheTeeAlone(club))

/** Every club with its full swing, then the part swings. */
export const swingsOf = ({ clubs: full, parts }: Bag): readonly BagClub[] => [...full, ...parts]

/** The one that carries farthest, of two the lower-lofted; null of none. */
export const longestOf = (among: readonly BagClub[]): BagClub | null =>
  among.reduce<BagClub | null>((longest, each) => (longest && longest.carry >= each.carry ? longest : each), null)
