/**
 * Territories whose handicapping differs from what is computed here, so that no figure is right there: Australia has a
 * multiplier of its own (0.93) and a four-ball provision of its own, both from memory.
 */
export const territoriesNotCovered = ['Australia'] as const
export type TerritoryNotCovered = (typeof territoriesNotCovered)[number]

/**
 * Figures that no public text lets anyone compute. They go in as given by an association and are never made up: the
 * expected score for holes not played, and the thresholds of the playing conditions calculation.
 * Source: Rules of Handicapping, rules 3.2, 5.1b and 5.6; R&A and USGA; 2024.
 */
export const figuresGiven = ['expected-score', 'playing-conditions'] as const
export type FigureGiven = (typeof figuresGiven)[number]
