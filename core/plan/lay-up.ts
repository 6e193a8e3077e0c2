import { type BagClub, longestOf } from './bag.ts'
import { type Swing, swingNearest } from './swing.ts'

/** How to lay up from a distance that no club covers. */
export type LayUp =
  /** A shot of `shot` leaves the favourite number; the club that comes nearest to it leaves `leaves`. */
  | {
      readonly kind: 'to-favourite'
      readonly shot: number
      readonly favourite: number
      readonly swing: Swing | null
      readonly leaves: number
    }
  /** The favourite number is out of reach too: the longest club, then again. */
  | { readonly kind: 'as-far-as-it-goes'; readonly club: BagClub; readonly leaves: number }
  /** Nearer than the favourite number already. */
  | { readonly kind: 'inside' }
  /** No favourite number is chosen. */
  | { readonly kind: 'no-number' }

/**
 * The same number left every time: the shot is what remains minus the favourite number. Common practice: 245 with
 * favourite 100 asks for a shot of 145.
 */
export function layUpFrom(remaining: number, favourite: number | null, among: readonly BagClub[]): LayUp {
  if (favourite === null) return { kind: 'no-number' }
  const shot = remaining - favourite
  if (shot <= 0) return { kind: 'inside' }
  const longest = longestOf(among)
  if (longest !== null && shot > longest.carry) {
    return { kind: 'as-far-as-it-goes', club: longest, leaves: remaining - longest.carry }
  }
  const swing = swingNearest(among, shot)
  const carry = swing?.hold === 'full' ? swing.club.carry : shot
  return { kind: 'to-favourite', shot, favourite, swing, leaves: remaining - carry }
}
