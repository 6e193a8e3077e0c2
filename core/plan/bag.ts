import { fraction, plus, roundHalfUp, times } from '#core/values/fraction.ts'
import { type Club, clubs, isForTheTeeAlone, ladderThousandths } from './clubs.ts'

/** A club with how far it carries, a whole number in the player's unit. Roll is never counted. */
export interface BagClub {
  readonly club: Club
  readonly carry: number
  /** True where the number is worked out from the others. */
  readonly isEstimated: boolean
}

export interface Bag {
  /** Lowest-lofted first; each with a carry. */
  readonly clubs: readonly BagClub[]
  /** In the bag without a carry, for want of numbers to estimate it from. */
  readonly unknown: readonly Club[]
}

/** From so many numbers the rest of a bag is estimated. Our own. */
export const enoughNumbers = 3

/** A bag from what the player said: null for a club that is there without a number. */
export function bagOf(said: ReadonlyMap<Club, number | null>): Bag {
  const known = clubs.flatMap(club => {
    const carry = said.get(club) ?? null
    return carry === null ? [] : [{ club, carry, isEstimated: false }]
  })
  const open = clubs.filter(club => said.has(club) && !known.some(each => each.club === club))
  if (known.length < enoughNumbers) return { clubs: known, unknown: open }
  const guessed = open.map(club => ({ club, carry: estimatedCarry(club, known), isEstimated: true }))
  return { clubs: clubs.flatMap(club => [...known, ...guessed].find(each => each.club === club) ?? []), unknown: [] }
}

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

/** The clubs that are played off the ground. */
export const clubsOffTheGround = (bag: Bag): readonly BagClub[] =>
  bag.clubs.filter(({ club }) => !isForTheTeeAlone(club))

/** The one that carries farthest, of two the lower-lofted; null of none. */
export const longestOf = (among: readonly BagClub[]): BagClub | null =>
  among.reduce<BagClub | null>((longest, each) => (longest && longest.carry >= each.carry ? longest : each), null)
