import type { CardScore } from '#core/card/card.ts'
import type { HoleScore } from '#core/card/score.ts'

/** What the strip draws for one hole, against the ball's own level. */
export type Mark =
  | { readonly kind: 'value'; readonly over: number }
  | { readonly kind: 'picked-up' }
  | { readonly kind: 'two'; readonly halves: readonly Mark[] }
  | { readonly kind: 'open' }
  /** The hole is out of play, for everybody. */
  | { readonly kind: 'out' }

const open: Mark = { kind: 'open' }
export const outOfPlay: Mark = { kind: 'out' }

export function markOfScore(score: HoleScore, level: number): Mark {
  if (score === 'picked-up') return { kind: 'picked-up' }
  if (score === 'not-played') return open
  return { kind: 'value', over: score - level }
}

/** A hole that nobody has written is open; two scores are drawn side by side, the lower first. */
export function markOfCardScore(found: CardScore | undefined, level: number): Mark {
  if (!found || found.kind === 'none') return open
  if (found.kind === 'one') return markOfScore(found.score, level)
  return { kind: 'two', halves: candidatesOf(found).map(score => markOfScore(score, level)) }
}

/** The different results that wait for a choice, numbers first and ascending. */
export function candidatesOf(found: CardScore): readonly HoleScore[] {
  return found.kind === 'two' ? inOrder(found.entries.map(({ value }) => value)) : []
}

/** Each result once, numbers first and ascending. */
export const inOrder = (scores: readonly HoleScore[]): readonly HoleScore[] =>
  [...new Set(scores)].sort((a, b) => orderOf(a) - orderOf(b))

const orderOf = (score: HoleScore): number =>
  typeof score === 'number' ? score : score === 'picked-up' ? 1_000 : 1_001
