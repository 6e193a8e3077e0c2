export const concededThings = ['stroke', 'hole', 'match'] as const
export type ConcededThing = (typeof concededThings)[number]

export interface Concession {
  readonly what: ConcededThing
  readonly by: 'player' | 'caddie'
  /** By the play before it. */
  readonly isHoleDecided: boolean
  /** False when left out. */
  readonly isMatchDecided?: boolean | undefined
}

/** A valid concession is final: it cannot be declined or withdrawn. */
export type ConcessionRuling =
  | { readonly isValid: true; readonly isFinal: true }
  | { readonly isValid: false; readonly reason: 'by-caddie' | 'hole-already-decided' | 'match-already-decided' }

/**
 * Whether a concession counts: a caddie cannot concede, one of a stroke or hole already decided is void, and a match can
 * be conceded until it is decided.
 * Source: Rules of Golf, rule 3.2b; R&A and USGA; 2019 and 2023.
 */
export function ruleOnConcession({ what, by, isHoleDecided, isMatchDecided = false }: Concession): ConcessionRuling {
  if (by === 'caddie') return { isValid: false, reason: 'by-caddie' }
  if (isMatchDecided) return { isValid: false, reason: 'match-already-decided' }
  if (isHoleDecided && what !== 'match') return { isValid: false, reason: 'hole-already-decided' }
  return { isValid: true, isFinal: true }
}
