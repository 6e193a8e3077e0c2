import type { BallId } from '#core/values/ids.ts'
import type { MatchSides } from './game-result.ts'

/** A hole or a match from the first side's view: won, halved, lost. */
export type Outcome = 1 | 0 | -1

/** The outcome where a ball's side gives up to another's; null where it is not this match. No opponent named is any. */
export function lossOf(sides: MatchSides, by: BallId, to: BallId | null): Outcome | null {
  if (to !== null && !isPair(sides, by, to)) return null
  return sides[0].includes(by) ? -1 : sides[1].includes(by) ? 1 : null
}

/** The outcome that two sides agreed; null where it is not this match. */
export function agreedOutcome(
  sides: MatchSides,
  { between, won }: { readonly between: readonly [BallId, BallId]; readonly won: BallId | null },
): Outcome | null {
  if (!isPair(sides, ...between)) return null
  if (won === null) return 0
  return sides[0].includes(won) ? 1 : sides[1].includes(won) ? -1 : null
}

const isPair = ([first, second]: MatchSides, one: BallId, other: BallId): boolean =>
  (first.includes(one) && second.includes(other)) || (first.includes(other) && second.includes(one))
