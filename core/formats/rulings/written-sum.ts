export interface WrittenSumRuling {
  readonly code: 'no-penalty'
  /** What counts: the committee's own sum of the hole scores. */
  readonly counts: number
}

/**
 * A total, points or a net score that stands wrong on a card: the player owes hole scores alone, and the committee's sum
 * counts.
 * Source: Rules of Golf, rule 3.3b(4); R&A and USGA; 2023. In 2019 the same of totals and points.
 */
export const ruleOnWrittenSum = (computed: number): WrittenSumRuling => ({ code: 'no-penalty', counts: computed })
