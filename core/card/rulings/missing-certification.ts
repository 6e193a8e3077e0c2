export type CertificationRuling =
  | { readonly code: 'disqualified' }
  /** Added to the last hole of the round. */
  | { readonly code: 'penalty-strokes'; readonly strokes: 2 }

/**
 * A card that player or marker has not certified.
 * Source: Rules of Golf, rule 3.3b(2); Model Local Rule L-1; R&A and USGA; 2019 and 2023.
 */
export const ruleOnMissingCertification = (hasLocalRuleL1: boolean): CertificationRuling =>
  hasLocalRuleL1 ? { code: 'penalty-strokes', strokes: 2 } : { code: 'disqualified' }
