import { sdOfRound } from './length-formulas.ts'

/** How often a hole ends in so many strokes to par: `shares[0]` belongs to `fromPar`, the next to one more. */
export interface HoleScores {
  readonly fromPar: number
  readonly shares: readonly number[]
}

/** A shot saved more often on a hole of more strokes. Our own. */
const savedByPar: Readonly<Record<number, number>> = { 3: 0.8, 5: 1.6 }
const [fewestSlips, mostSlips] = [3, 40]

/**
 * A hole's scores about its mean over par: now and then a stroke saved, and a number of slips that spreads eighteen holes as
 * widely as the Index says. Source: derived; agrees with Riccio 1990 to a tenth of the holes.
 */
export function holeScores(handicapIndex: number, meanOverPar: number, par: number): HoleScores {
  const usual = 0.3 * Math.exp(-(handicapIndex + 5) / 13.5) * (savedByPar[par] ?? 1)
  const saved = Math.min(0.9, Math.max(usual, -meanOverPar))
  const slips = slipsFor(sdOfRound(handicapIndex) ** 2 / 18, saved, meanOverPar + saved)
  const share = Math.min(1, (meanOverPar + saved) / slips)
  const binomial = binomialShares(slips, share)
  const shares = Array.from(
    { length: slips + 2 },
    (_, at) => saved * (binomial[at] ?? 0) + (1 - saved) * (binomial[at - 1] ?? 0),
  )
  return { fromPar: -1, shares }
}

/** The number of chances to slip whose variance comes nearest to what is wanted. */
function slipsFor(variance: number, saved: number, mean: number): number {
  let best = Math.max(fewestSlips, Math.ceil(mean))
  const gap = (slips: number): number => Math.abs(saved * (1 - saved) + mean * (1 - mean / slips) - variance)
  for (let slips = best; slips <= mostSlips; slips++) if (gap(slips) < gap(best)) best = slips
  return best
}

function binomialShares(chances: number, share: number): number[] {
  let shares = [1]
  for (let chance = 0; chance < chances; chance++) {
    shares = Array.from(
      { length: chance + 2 },
      (_, at) => (shares[at] ?? 0) * (1 - share) + (shares[at - 1] ?? 0) * share,
    )
  }
  return shares
}

/** Several holes together, each for itself: scores of one hole say nothing of the next. */
export function holesTogether(holes: readonly HoleScores[]): HoleScores {
  return holes.reduce(
    (sum, { fromPar, shares }) => {
      const both = new Array<number>(sum.shares.length + shares.length - 1).fill(0)
      for (const [at, one] of sum.shares.entries()) {
        for (const [by, other] of shares.entries()) both[at + by] = (both[at + by] ?? 0) + one * other
      }
      return { fromPar: sum.fromPar + fromPar, shares: both }
    },
    { fromPar: 0, shares: [1] },
  )
}

export const meanOf = ({ fromPar, shares }: HoleScores): number =>
  shares.reduce((sum, share, at) => sum + share * (fromPar + at), 0)
