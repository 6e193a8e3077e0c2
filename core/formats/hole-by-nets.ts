/** A hole of a match from side A's view: won, halved, lost; `null` is not known yet. */
export type MatchHole = 1 | 0 | -1 | null

/** A side's net score on a hole; `picked-up` when none of its balls was holed, `null` when it is not known yet. */
export type SideNet = number | 'picked-up' | null

/**
 * One hole of a match by net scores. A ball picked up loses to one holed; where neither side holed out and nobody says
 * who gave up last, the hole is tied.
 * Source: Rules of Golf, rules 3.2a, 3.2c(2) and 23.2a; R&A and USGA; 2019 and 2023 (clarification 23.2a/1 for no ball
 * holed).
 */
export function matchHole(netA: SideNet, netB: SideNet): MatchHole {
  if (netA === null || netB === null) return null
  if (netA === netB) return 0
  if (netA === 'picked-up') return -1
  if (netB === 'picked-up') return 1
  return netA < netB ? 1 : -1
}
