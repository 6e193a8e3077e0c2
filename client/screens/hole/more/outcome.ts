import { say } from '../../../words/say-any.ts'

/** What becomes of a hole or a match between two sides. */
export const outcomes = ['first', 'halved', 'second'] as const
export type Outcome = (typeof outcomes)[number]

/** "won by Alder & Cedar", "halved" */
export function outcomeWords(sides: readonly string[], outcome: Outcome): string {
  if (outcome === 'halved') return say('halved')
  return say('agree-won', { side: sides[outcome === 'first' ? 0 : 1] ?? '' })
}
