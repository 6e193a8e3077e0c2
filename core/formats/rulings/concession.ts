export const concededThings = ['stroke', 'hole', 'match'] as const
export type ConcededThing = (typeof concededThings)[number]

export interface Concession {
  readonly what: ConcededThing
  readonly by: 'player' | 'caddie'
  /** By the play before it. */
  readonly isHoleDecided: boolean
}

/** A valid concession is final: it cannot be declined or withdrawn. */
export type ConcessionRuling =
  | { readonly isValid: true; readonly isFinal: true }
  | { readonly isValid: false; readonly reason: 'by-caddie' | 'hole-already-decided' }

/**
 * Whether a concession counts: a caddie cannot concede, and one of a stroke or hole already decided is void.
 * Source: Rules of Golf, rule 3.2b; R&A and USGA; 2019 and 2023.
 */
export function ruleOnConcession({ what, by, isHoleDecided }: Concession): ConcessionRuling {
  if (by === 'caddie') return { isValid: false, reason: 'by-caddie' }
  if (isHoleDecided && what !== 'match') return { isValid: false, reason: 'hole-already-decided' }
  return { isValid: true, isFinal: true }
}
