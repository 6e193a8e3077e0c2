/** A handicap told to the opponent before or during a match. */
export interface DeclaredHandicap {
  readonly declared: number
  readonly correct: number
  /** Whether strokes were given or received by it, even on holes still to come. */
  readonly affectsStrokes: boolean
  /** Before the opponent's next stroke. */
  readonly isCorrectedInTime: boolean
}

export type MatchHandicapRuling =
  | { readonly code: 'no-penalty'; readonly playsOff: number }
  | { readonly code: 'disqualified' }

/**
 * A wrong handicap in a match: too high with effect on the strokes disqualifies, too low is what the player plays off.
 * Source: Rules of Golf, rule 3.2c(1) and its clarification; R&A and USGA; 2019 and 2023. Correction in time: second-hand.
 */
export function ruleOnMatchHandicap(handicap: DeclaredHandicap): MatchHandicapRuling {
  const { declared, correct, affectsStrokes, isCorrectedInTime } = handicap
  if (isCorrectedInTime || declared === correct) return { code: 'no-penalty', playsOff: correct }
  if (declared < correct) return { code: 'no-penalty', playsOff: declared }
  return affectsStrokes ? { code: 'disqualified' } : { code: 'no-penalty', playsOff: correct }
}
