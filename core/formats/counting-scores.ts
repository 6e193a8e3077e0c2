import { compareNets, type KnownNet } from './known-net.ts'

/**
 * A side's score on a hole from its best few balls; `null` where fewer than `count` were holed.
 * The better ball of two is the best one: Rules of Golf, rule 23.2a; R&A and USGA; 2019 and 2023. More than one of four is
 * common practice with the allowances of Rules of Handicapping, Appendix C.
 */
export function bestScores(nets: readonly KnownNet[], count: number): number | null {
  const best = [...nets].sort(compareNets).slice(0, count)
  const holed = best.filter(net => net !== 'picked-up')
  return holed.length < count ? null : holed.reduce((sum, net) => sum + net, 0)
}
