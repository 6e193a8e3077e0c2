const pointsForNetPar = 2

/**
 * Stableford points of one hole; `null` is a hole without a score and earns none, as does two over the target or worse.
 * Strokes received are negative where a plus player gives one back.
 * Source: Rules of Golf, rule 21.1b; R&A and USGA; 2019 and 2023. The printed table ends at four under with six points;
 * one more for each stroke beyond is derived.
 */
export function stablefordPoints(par: number, strokesReceived: number, gross: number | null): number {
  if (gross === null) return 0
  return Math.max(0, pointsForNetPar + par + strokesReceived - gross)
}
