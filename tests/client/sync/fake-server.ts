import { addNumber, type Here, isHere } from '#core/log/ranges.ts'
import type { DeviceId } from '#core/values/ids.ts'
import type { Exchange, Exchanged } from '#shared/messages/exchange.ts'
import type { StoredOp } from '#shared/messages/feed.ts'
import type { Follow, Followed } from '#shared/messages/follow.ts'
import type { Pull, Pulled } from '#shared/messages/pull.ts'
import type { Pushed } from '#shared/messages/push.ts'
import type { Tell } from '#shared/messages/tell.ts'
import type { Verdict } from '#shared/messages/verdict.ts'
import { parseOp } from '#shared/op.ts'
import { groupOfFeedOf } from './feed-group.ts'

export type Answer = Followed | Pulled | Exchanged | Pushed

/** A server of one log in memory: stores, numbers and tells; who may do what is not its matter. */
export interface FakeServer {
  era: string
  ops: StoredOp[]
  /** Gives an op another verdict than storing it. */
  judge: (text: string) => Verdict | null
  isKnown: boolean
  readonly answer: (question: string, message: unknown) => Answer
  readonly listen: (follower: (tell: Tell) => void) => () => void
}

export function createFakeServer(): FakeServer {
  const followers = new Set<(tell: Tell) => void>()
  const server: FakeServer = {
    era: 'era00001',
    ops: [],
    judge: () => null,
    isKnown: true,
    listen: follower => {
      followers.add(follower)
      return () => followers.delete(follower)
    },
    answer: (question, message) => {
      if (question === 'push') return push((message as { ops: string[] }).ops)
      if (!server.isKnown) return { kind: 'stranger', why: 'log unknown' }
      if (question === 'follow') return follow(message as Follow)
      if (question === 'pull') return { kind: 'pulled', part: partOf(message as Pull) }
      return exchange(message as Exchange)
    },
  }
  const inFeed = (feed: string) =>
    server.ops.filter(([, text]) => groupOfFeedOf(feed, JSON.parse(text).scope as string | null))
  const partOf = ({ feed, after }: Pull) => {
    const ops = inFeed(feed).filter(([seq]) => seq > after)
    return { feed, upTo: ops.at(-1)?.[0] ?? after, ops, more: false }
  }
  const follow = ({ era, feeds }: Follow): Followed => {
    const sameEra = era === server.era
    return {
      kind: 'followed',
      era: server.era,
      role: 'desk',
      group: null,
      sameEra,
      parts: sameEra ? feeds.map(partOf) : [],
    }
  }
  const exchange = ({ feed, here }: Exchange): Exchanged => {
    const theirs: Here = new Map(here)
    const ops = inFeed(feed).filter(([, text]) => {
      const { device, n } = JSON.parse(text)
      return !isHere(theirs, device, n)
    })
    const part = { feed, upTo: server.ops.length, ops, more: false }
    return { kind: 'exchanged', era: server.era, part, here: [...hereOf(inFeed(feed))].map(mutable) }
  }
  const push = (texts: readonly string[]): Pushed => ({ verdicts: texts.map(take) })
  const take = (text: string): Verdict => {
    const judged = server.judge(text)
    if (judged) return judged
    const parsed = parseOp(text)
    if (!parsed.ok) return { kind: 'refused', code: 'wrong shape', path: parsed.error.path }
    const { device, n, scope } = parsed.value
    const held = server.ops.find(([, other]) => {
      const op = JSON.parse(other)
      return op.device === device && op.n === n
    })
    if (held)
      return held[1] === text
        ? { kind: 'already stored', seq: held[0] }
        : { kind: 'refused', code: 'identity taken', path: 'n' }
    server.isKnown = true
    const feeds = ['all', ...(scope ? [`g/${scope}`] : groupsOf(server.ops))]
    const before = new Map(feeds.map(feed => [feed, inFeed(feed).at(-1)?.[0] ?? 0]))
    const seq = server.ops.length + 1
    const stored: StoredOp = [seq, text, 5_000 + seq, null]
    server.ops.push(stored)
    for (const feed of feeds)
      for (const follower of followers) follower({ feed, before: before.get(feed) ?? 0, upTo: seq, ops: [stored] })
    return { kind: 'stored', seq }
  }
  return server
}

const groupsOf = (ops: readonly StoredOp[]): string[] => [
  ...new Set(ops.flatMap(([, text]) => [...text.matchAll(/"key":"group\/([a-z0-9-]+)"/g)].map(([, id]) => `g/${id}`))),
]

function hereOf(ops: readonly StoredOp[]): Here {
  const here = new Map<DeviceId, ReturnType<typeof addNumber>>()
  for (const [, text] of ops) {
    const { device, n } = JSON.parse(text)
    here.set(device, addNumber(here.get(device) ?? [], n))
  }
  return here
}

const mutable = ([device, ranges]: readonly [DeviceId, ReturnType<typeof addNumber>]): [
  DeviceId,
  [number, number][],
] => [device, ranges.map(([from, to]) => [from, to])]
