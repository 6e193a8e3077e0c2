import { bestFew } from './counting-balls.ts'
import type { KnownNet } from './known-net.ts'

/**
 * A side's score on a hole from its best few balls; `null` where fewer than `count` were holed.
 * The better ball of two is the best one: Rules of Golf, rule 23.2a; R&A and USGA; 2019 and 2023. More than one of four is
 * common practice with the allowances of Rules of Handicapping, Appendix C.
 */
export function bestScores(nets: readonly KnownNet[], count: number): number | null {
  const holed = nets.filter(net => net !== 'picked-up').map(value => ({ value, level: 0 }))
  const best = bestFew(holed, count, 'low')
  return best.length < count ? null : best.reduce((sum, { value }) => sum + value, 0)
}
