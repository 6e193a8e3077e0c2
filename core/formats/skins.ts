import { compareNets, type KnownNet } from './known-net.ts'

/** What becomes of the skin of a tied hole. */
export const skinsMethods = ['carry-over', 'no-carry-over'] as const
export type SkinsMethod = (typeof skinsMethods)[number]

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
  const holes: SkinsHole[] = []
  for (const nets of netsByHole) {
    const pot = (holes.at(-1)?.carried ?? 0) + 1
    const winner = soleLowest(nets)
    const carried = winner === null && method === 'carry-over' ? pot : 0
    holes.push({ winner, skins: winner === null ? 0 : pot, carried })
  }
  const totals = (netsByHole[0] ?? []).map((_, player) => skinsWon(holes.filter(hole => hole.winner === player)))
  return { holes, totals, unclaimed: netsByHole.length - skinsWon(holes) }
}

const skinsWon = (holes: readonly SkinsHole[]): number => holes.reduce((sum, hole) => sum + hole.skins, 0)

function soleLowest(nets: readonly KnownNet[]): number | null {
  const unbeaten = [...nets.keys()].filter(at => !nets.some((net, other) => other !== at && !isLower(nets[at], net)))
  return unbeaten[0] ?? null
}

const isLower = (net: KnownNet | undefined, other: KnownNet): boolean =>
  net !== undefined && compareNets(net, other) < 0
