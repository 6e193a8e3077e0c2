import { type BagClub, longestOf } from './bag.ts'

/** A club for a number: held at full length, gripped down, or swung less than full where no club of the bag is that short. */
export interface Swing {
  readonly club: BagClub
  readonly hold: 'full' | 'gripped-down' | 'part'
}

/** The shortest club that carries `number`, of two the higher-lofted, swung for `plays`; null where none carries it. */
export function swingThatCarries(among: readonly BagClub[], number: number, plays: number): Swing | null {
  const club = shortestOf(among.filter(({ carry }) => carry >= number))
  if (club === null) return null
  if (club.carry === plays) return { club, hold: 'full' }
  return { club, hold: among.every(({ carry }) => carry > number) ? 'part' : 'gripped-down' }
}

/** The club whose carry is nearest, of two the shorter; null of none, and where it is beyond the longest. */
export function swingNearest(among: readonly BagClub[], number: number): Swing | null {
  const [shortest, longest] = [shortestOf(among), longestOf(among)]
  if (shortest === null || longest === null || number > longest.carry) return null
  if (number < shortest.carry) return { club: shortest, hold: 'part' }
  const gap = ({ carry }: BagClub): number => Math.abs(carry - number)
  const club = among.reduce((found, each) =>
    gap(each) < gap(found) || (gap(each) === gap(found) && each.carry < found.carry) ? each : found,
  )
  return { club, hold: 'full' }
}

const shortestOf = (among: readonly BagClub[]): BagClub | null =>
  among.reduce<BagClub | null>((found, each) => (found && found.carry < each.carry ? found : each), null)
