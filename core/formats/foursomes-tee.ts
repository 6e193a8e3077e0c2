export const teeHoles = ['odd', 'even'] as const
export type TeeHoles = (typeof teeHoles)[number]

/**
 * Which partner of a foursomes side tees off at a hole, whoever holed out before: the first or the second.
 * Source: Rules of Golf, rule 22.3; R&A and USGA; 2019 and 2023.
 */
export function foursomesTeePlayer(firstTeesAt: TeeHoles, hole: number): 'first' | 'second' {
  const parity: TeeHoles = hole % 2 === 0 ? 'even' : 'odd'
  return parity === firstTeesAt ? 'first' : 'second'
}
