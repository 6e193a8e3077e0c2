import { type HoleKey, type HoleScore, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { BallId } from '#core/values/ids.ts'

/** Two keys nearer to each other in time are no thumb's work; nobody aims twice in less. */
export const burstMs = 150
/** Whatever follows two touches at once within this time is held. */
export const afterTwoMs = 600

/** A key that was pressed; a null score clears the hole. */
export interface Tap extends PlayedHole {
  readonly ball: BallId
  readonly score: HoleScore | null
}

/** When it came, in milliseconds of one clock, and what the hand did. */
export interface Touch {
  readonly at: number
  /** The last time that two fingers, or drops, were down at once; null for never. */
  readonly twoAt: number | null
  /** Pressed on a keyboard, one key after the other. */
  readonly isByKey: boolean
}

export interface Guard {
  /** The last key that went in. */
  readonly last: { readonly tap: Tap; readonly at: number } | null
  /** Keys that wait for a word, one a ball. */
  readonly held: readonly Tap[]
  readonly reason: 'burst' | 'other-hole' | null
  /** A hole that somebody has said yes to. */
  readonly sureOf: HoleKey | null
}

export const openGuard: Guard = { last: null, held: [], reason: null, sureOf: null }

/** Takes a key: it goes in, or it is held and asked about. `isCurrent` where the group may be on its hole. */
export function guardTap(
  guard: Guard,
  tap: Tap,
  touch: Touch,
  isCurrent: boolean,
): Guard & { readonly goesIn: boolean } {
  if (guard.reason !== null) return { ...guard, held: [...withoutBall(guard.held, tap), tap], goesIn: false }
  if (isBurst(guard, touch)) return { ...guard, held: [tap], reason: 'burst', goesIn: false }
  if (!isCurrent && guard.sureOf !== holeKey(tap)) return { ...guard, held: [tap], reason: 'other-hole', goesIn: false }
  // A yes is for its hole alone, until another is scored.
  const sureOf = guard.sureOf === holeKey(tap) ? guard.sureOf : null
  return { ...guard, last: { tap, at: touch.at }, sureOf, goesIn: true }
}

function isBurst({ last }: Guard, { at, twoAt, isByKey }: Touch): boolean {
  if (isByKey) return false
  if (twoAt !== null && at - twoAt < afterTwoMs) return true
  return last !== null && at - last.at < burstMs
}

const withoutBall = (held: readonly Tap[], { ball, hole, lap }: Tap): readonly Tap[] =>
  held.filter(each => each.ball !== ball || each.hole !== hole || each.lap !== lap)

/** Yes: the keys go in, and their hole is asked about no more. No: they are forgotten. */
export function answerGuard(guard: Guard, isYes: boolean): Guard {
  const [first] = guard.held
  const sureOf = isYes && first ? holeKey(first) : guard.sureOf
  return { last: null, held: [], reason: null, sureOf }
}
