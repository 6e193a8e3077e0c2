import type { IncomingMessage } from 'node:http'
import { networkOf } from './limiter.ts'

/** Why a link is not opened. The phone goes on by plain requests and tries again. */
const linkRefusals = ['another site', 'server full', 'address full'] as const
export type LinkRefusal = (typeof linkRefusals)[number]

export interface LinkGateOptions {
  readonly isOwnOrigin: (request: IncomingMessage) => boolean
  readonly addressOf: (request: IncomingMessage) => string
  /** Links of the whole server at once. */
  readonly most: number
  /** Links from one address at once, a network of 2^64 in IPv6; 0: no such limit. A field shares an address. */
  readonly mostOfAddress: number
}

export interface LinkGate {
  /** Why this one may not open; null when it may. A refusal is counted. */
  refuse(request: IncomingMessage): LinkRefusal | null
  /** Counts an open link until `leave` is called, once. */
  enter(request: IncomingMessage): { leave(): void }
  readonly refused: Readonly<Record<LinkRefusal, number>>
}

/** Lets links in, and counts those that are open by address. */
export function createLinkGate({ isOwnOrigin, addressOf, most, mostOfAddress }: LinkGateOptions): LinkGate {
  const open = new Map<string, number>()
  const refused = Object.fromEntries(linkRefusals.map(why => [why, 0])) as Record<LinkRefusal, number>
  const placeOf = (request: IncomingMessage): string => networkOf(addressOf(request))
  let count = 0
  const refusalOf = (request: IncomingMessage): LinkRefusal | null => {
    if (!isOwnOrigin(request)) return 'another site'
    if (count >= most) return 'server full'
    return mostOfAddress > 0 && (open.get(placeOf(request)) ?? 0) >= mostOfAddress ? 'address full' : null
  }
  return {
    refused,
    refuse(request) {
      const why = refusalOf(request)
      if (why !== null) refused[why]++
      return why
    },
    enter(request) {
      const place = placeOf(request)
      open.set(place, (open.get(place) ?? 0) + 1)
      count++
      return {
        leave() {
          count--
          const left = (open.get(place) ?? 1) - 1
          if (left > 0) open.set(place, left)
          else open.delete(place)
        },
      }
    },
  }
}
