import { unreachable } from '#core/values/assert.ts'

/** Whose duty the handicap on a card is; the editions of the Rules of Golf differ, and a Local Rule can go back. */
export const cardHandicapDuties = ['player', 'committee'] as const
export type CardHandicapDuty = (typeof cardHandicapDuties)[number]

export const golfEditions = ['2019', '2023'] as const
export type GolfEdition = (typeof golfEditions)[number]

/** Source: Rules of Golf, rule 3.3b(4); R&A and USGA; 2019 and 2023; Model Local Rule L-2 (2023), second-hand. */
export const cardHandicapDuty = (edition: GolfEdition, hasLocalRuleL2: boolean): CardHandicapDuty =>
  edition === '2019' || hasLocalRuleL2 ? 'player' : 'committee'

/** The handicap that stood on a card returned in stroke play. */
export interface CardHandicap {
  readonly onCard: number | null
  readonly correct: number
  /** Whether the strokes received differ by it. */
  readonly affectsStrokes: boolean
}

export type CardHandicapRuling =
  | { readonly code: 'no-penalty'; readonly netOff: number }
  | { readonly code: 'disqualified' }

/**
 * A wrong or missing handicap on a card. The player's duty: missing, or too high with effect, disqualifies; too low
 * stands. The committee's: no penalty, the net score is off the correct one.
 * Source: Rules of Golf, rule 3.3b(4); R&A and USGA; 2019 and 2023.
 */
export function ruleOnCardHandicap(duty: CardHandicapDuty, handicap: CardHandicap): CardHandicapRuling {
  const { onCard, correct, affectsStrokes } = handicap
  switch (duty) {
    case 'committee':
      return { code: 'no-penalty', netOff: correct }
    case 'player':
      if (onCard === null || (onCard > correct && affectsStrokes)) return { code: 'disqualified' }
      return { code: 'no-penalty', netOff: Math.min(onCard, correct) }
    default:
      return unreachable(duty)
  }
}
