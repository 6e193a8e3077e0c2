import { must } from '#core/values/assert.ts'
import { matchHole } from './hole-by-nets.ts'

/**
 * A hole against its target, par less strokes received: won, halved or lost; a hole without a score (`null`) is lost.
 * Source: Rules of Golf, rule 21.3; R&A and USGA; 2019 and 2023.
 */
export function parBogey(par: number, strokesReceived: number, gross: number | null): 1 | 0 | -1 {
  const net = gross === null ? 'picked-up' : gross - strokesReceived
  return must(matchHole(net, par), 'parBogey: both sides are known')
}
