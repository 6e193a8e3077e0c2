import { unreachable } from '#core/values/assert.ts'

export const startForms = ['stroke-play', 'maximum-score', 'stableford', 'par-bogey', 'match'] as const
export type StartForm = (typeof startForms)[number]

/** What a penalty costs, in the unit of the form of play. */
export type StartPenalty =
  /** On the first hole. */
  | { readonly unit: 'strokes'; readonly strokes: 2 }
  /** Off the total of the round. */
  | { readonly unit: 'points'; readonly points: -2 }
  /** Off the result of the round. */
  | { readonly unit: 'holes'; readonly holes: -1 }
  /** The first. */
  | { readonly unit: 'hole-lost' }

export type StartTimeRuling =
  | { readonly code: 'no-penalty' }
  | { readonly code: 'general-penalty'; readonly penalty: StartPenalty }
  | { readonly code: 'disqualified' }

const graceMinutes = 5

/**
 * A start at the wrong time: up to five minutes late or early (negative), five included, is the general penalty on the
 * first hole played; more disqualifies. Exceptional circumstances, which only a committee sees, are none.
 * Source: Rules of Golf, rule 5.3a; R&A and USGA; 2019 and 2023. What Stableford and par/bogey lose: from memory.
 */
export function ruleOnStartTime(minutesLate: number, form: StartForm): StartTimeRuling {
  if (minutesLate === 0) return { code: 'no-penalty' }
  if (Math.abs(minutesLate) > graceMinutes) return { code: 'disqualified' }
  return { code: 'general-penalty', penalty: penaltyIn(form) }
}

function penaltyIn(form: StartForm): StartPenalty {
  switch (form) {
    case 'stroke-play':
    case 'maximum-score':
      return { unit: 'strokes', strokes: 2 }
    case 'stableford':
      return { unit: 'points', points: -2 }
    case 'par-bogey':
      return { unit: 'holes', holes: -1 }
    case 'match':
      return { unit: 'hole-lost' }
    default:
      return unreachable(form)
  }
}
