import { compareNets, type KnownNet } from './known-net.ts'
import type { SkinsMethod } from './skins-methods.ts'

/** One hole: who won how many skins; nobody where it was tied. */
export interface SkinsHole {
  /** Position among the players; `null` where the lowest score was tied. */
  readonly winner: number | null
  /** Skins won here; 0 without a winner. */
  readonly skins: number
  /** Skins that wait for the next hole. */
  readonly carried: number
}

export interface Skins {
  readonly holes: readonly SkinsHole[]
  /** Skins of each player, in the order given. */
  readonly totals: readonly number[]
  /** One skin a hole, less those won. */
  readonly unclaimed: number
}

/**
 * Skins over holes in order of play: the one lowest net score takes the hole's skin and those carried to it.
 * Common practice; no body publishes it.
 */
export function skinsOf(netsByHole: readonly (readonly KnownNet[])[], method: SkinsMethod): Skins {
  const outcomes = netsByHole.map(nets => skinOutcomes(nets.map(net => [net])))
  const holes = skinsOfOutcomes(outcomes, method).map(({ outcomes: [winner = null], pots: [pot = 0], carried }) => ({
    winner,
    skins: winner === null ? 0 : pot,
    carried: carried[0] ?? 0,
  }))
  const totals = (netsByHole[0] ?? []).map((_, player) => skinsWon(holes.filter(hole => hole.winner === player)))
  return { holes, totals, unclaimed: netsByHole.length - skinsWon(holes) }
}

const skinsWon = (holes: readonly SkinsHole[]): number => holes.reduce((sum, hole) => sum + hole.skins, 0)

/** Who may win a hole: positions among the players, `null` for a tie. One alone where it is known. */
export type SkinOutcomes = readonly (number | null)[]

/** Every way that a hole may go where a player has one of several scores. */
export function skinOutcomes(nets: readonly (readonly KnownNet[])[]): SkinOutcomes {
  const winners = [...nets.keys()].filter(at => nets.every((_, other) => other === at || canBeat(nets, at, other)))
  return [...winners, ...(canTie(nets) ? [null] : [])]
}

const canBeat = (nets: readonly (readonly KnownNet[])[], at: number, other: number): boolean =>
  (nets[at] ?? []).some(net => (nets[other] ?? []).some(each => compareNets(net, each) < 0))

/** Two can have a score that none of the others must be under. */
function canTie(nets: readonly (readonly KnownNet[])[]): boolean {
  return [...new Set(nets.flat())].some(net => {
    const isNoneUnder = nets.every(each => each.some(other => compareNets(net, other) <= 0))
    return isNoneUnder && nets.filter(each => each.includes(net)).length > 1
  })
}

/** A hole whose outcome may be open: how many skins may lie on it, and how many may wait after it. */
export interface OpenSkinsHole {
  readonly outcomes: SkinOutcomes
  readonly pots: readonly number[]
  readonly carried: readonly number[]
}

/**
 * Skins over holes that may be open: an open hole leaves the pot open as far as the next one that is won. A hole after the
 * scheduled ones is played for what waits and adds no skin.
 */
export function skinsOfOutcomes(
  outcomesByHole: readonly SkinOutcomes[],
  method: SkinsMethod,
  scheduled: number = outcomesByHole.length,
): OpenSkinsHole[] {
  const holes: OpenSkinsHole[] = []
  for (const [place, outcomes] of outcomesByHole.entries()) {
    const added = place < scheduled ? 1 : 0
    const pots = (holes.at(-1)?.carried ?? [0]).map(waiting => waiting + added)
    const after = outcomes.flatMap(winner => (winner === null && method === 'carry-over' ? pots : [0]))
    holes.push({ outcomes, pots, carried: [...new Set(after)].sort((a, b) => a - b) })
  }
  return holes
}
