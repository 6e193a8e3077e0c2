import { type Here, hasNumber } from '#core/log/ranges.ts'
import type { LogId } from '#core/values/ids.ts'
import { limits } from '#shared/limits.ts'
import type { Exchange } from '#shared/messages/exchange.ts'
import type { Feed, FeedPart, StoredOp } from '#shared/messages/feed.ts'
import type { FeedEnds, Store } from '../store/store.ts'
import { groupOfFeed } from '../store/store.ts'

/** Of one part, in characters of op text: a phone on a weak signal gets the rest when it asks again. */
const textInPart = 400_000

/** The last sequence of a feed. */
export function endOfFeed({ seq, noScope, byGroup }: FeedEnds, feed: Feed): number {
  const group = groupOfFeed(feed)
  return group === null ? seq : Math.max(noScope, byGroup.get(group) ?? 0)
}

/** What a feed holds after a sequence. It is complete up to its last op's, which the next tell names as `before`. */
export async function readPart(
  store: Store,
  log: LogId,
  { feed, after, upTo }: { readonly feed: Feed; readonly after: number; readonly upTo: number },
): Promise<FeedPart> {
  const limit = limits.opsInAnswer
  const ops = await store.read(log, { feed, after, upTo, limit: limit + 1, textLength: textInPart })
  const end = ops.at(-1)
  if (!end) return { feed, upTo: after, ops: [], more: false }
  const sent = ops.slice(0, limit)
  const last = (sent.at(-1) ?? end)[0]
  return { feed, upTo: last, ops: sent, more: await hasMore(store, log, feed, last, upTo) }
}

async function hasMore(store: Store, log: LogId, feed: Feed, after: number, upTo: number): Promise<boolean> {
  return (await store.read(log, { feed, after, upTo, limit: 1, textLength: 1 })).length > 0
}

/** What a phone lacks of a feed, by its own account of what it has. */
export async function readMissing(store: Store, log: LogId, { feed, here }: Exchange, end: number): Promise<FeedPart> {
  const theirs = new Map(here)
  const lacks = ([, text]: StoredOp) => {
    const { device, n } = JSON.parse(text) as { device: Exchange['here'][number][0]; n: number }
    return !hasNumber(theirs.get(device) ?? [], n)
  }
  const ops: StoredOp[] = []
  let length = 0
  let after = 0
  while (after < end) {
    const part = await readPart(store, log, { feed, after, upTo: end })
    for (const op of part.ops.filter(lacks)) {
      if (ops.length >= limits.opsInAnswer || (ops.length > 0 && length + op[1].length > textInPart)) {
        return { feed, upTo: ops.at(-1)?.[0] ?? 0, ops, more: true }
      }
      ops.push(op)
      length += op[1].length
    }
    after = part.upTo
    if (!part.more) break
  }
  return { feed, upTo: end, ops, more: false }
}

export const hereRows = (here: Here): Exchange['here'] =>
  [...here].map(([device, ranges]) => [device, ranges.map(([from, to]) => [from, to])])
