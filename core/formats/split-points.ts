import { type Fraction, fraction } from '#core/values/fraction.ts'
import { compareNets, type KnownNet } from './known-net.ts'

/** Points of a hole from the best place to the worst. Common practice; no body publishes them. */
export const splitPointScales = { 'nine-points': [5, 3, 1], 'split-sixes': [4, 2, 0] } as const satisfies Record<
  string,
  readonly number[]
>
export type SplitPointScale = keyof typeof splitPointScales

/**
 * Points of one hole for players each for themselves, in the order given: those who tie share the points of their places.
 * Nine points: 5-3-1, 4-4-1, 5-2-2, 3-3-3. Split sixes: 4-2-0, 3-3-0, 4-1-1, 2-2-2. Common practice.
 */
export function splitPoints(nets: readonly KnownNet[], scale: SplitPointScale): Fraction[] {
  const points: readonly number[] = splitPointScales[scale]
  return nets.map(net => {
    const better = nets.filter(other => compareNets(other, net) < 0).length
    const level = nets.filter(other => compareNets(other, net) === 0).length
    const shared = points.slice(better, better + level).reduce((sum, each) => sum + each, 0)
    return fraction(shared, level)
  })
}
