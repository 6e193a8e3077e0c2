import type { DeviceId, GroupId } from '#core/values/ids.ts'
import type { Feed, StoredOp } from '#shared/messages/feed.ts'
import type { Offered, Tell } from '#shared/messages/tell.ts'
import type { Actor } from '#shared/roles.ts'
import { type FeedEnds, groupOfFeed } from '../store/store.ts'
import type { Clock } from './clock.ts'
import type { Link, TellMany } from './link.ts'

/** Between two tells of the feed of all: boards get batches, at most twice a second. */
export const boardPauseMs = 500

/** A stored op with what decides who hears of it. */
export interface News {
  readonly scope: GroupId | null
  readonly op: StoredOp
}

interface Follower {
  readonly feeds: ReadonlySet<Feed>
  /** Null for a guest. */
  actor: Actor | null
  /** What came while its answer was being made; null once it listens. */
  held: Tell[] | null
}

/** The phones that follow one log, and what they have been told. */
export interface Hall {
  /** From here on the link misses nothing of these feeds; it hears of it once it is released. */
  admit(link: Link, feeds: readonly Feed[], actor: Actor | null): void
  release(link: Link): void
  leave(link: Link): void
  links(): readonly Link[]
  setActor(link: Link, actor: Actor | null): void
  note(news: News): void
  offer(message: Offered): void
  /** To those whom it concerns. */
  asked(concerns: (actor: Actor) => boolean): void
  /** Up to where a feed may be read so that the next tell joins on. */
  toldUpTo(feed: Feed): number
  tellGroups(): void
  tellAll(): void
  close(): void
}

export function createHall(ends: FeedEnds, clock: Clock, tellMany: TellMany): Hall {
  const followers = new Map<Link, Follower>()
  const lastByGroup = new Map(ends.byGroup)
  let lastOfNoScope = ends.noScope
  let lastNoted = ends.seq
  let toldAll = ends.seq
  let forGroups: News[] = []
  let forAll: StoredOp[] = []
  let nextBoardAt = 0
  let isGroupTellPlanned = false
  let cancelBoard: (() => void) | null = null

  const lastOf = (group: GroupId | null) => Math.max(lastOfNoScope, group === null ? 0 : (lastByGroup.get(group) ?? 0))

  const send = (message: Tell) => {
    const listening: Link[] = []
    for (const [link, { feeds, held }] of followers) {
      if (!feeds.has(message.feed)) continue
      if (held) held.push(message)
      else listening.push(link)
    }
    if (listening.length > 0) tellMany(listening, message)
  }

  const tellGroups = () => {
    isGroupTellPlanned = false
    const news = forGroups
    forGroups = []
    const feeds = new Set([...followers.values()].flatMap(follower => [...follower.feeds]))
    feeds.delete('all')
    for (const feed of feeds) {
      const group = groupOfFeed(feed)
      const ops = news.filter(({ scope }) => scope === null || scope === group).map(({ op }) => op)
      const last = ops.at(-1)
      if (last) send({ feed, before: lastOf(group), upTo: last[0], ops })
    }
    for (const { scope, op } of news) {
      if (scope === null) lastOfNoScope = op[0]
      else lastByGroup.set(scope, op[0])
    }
  }

  const tellAll = () => {
    cancelBoard?.()
    cancelBoard = null
    const ops = forAll
    const last = ops.at(-1)
    if (!last) return
    forAll = []
    const before = toldAll
    toldAll = last[0]
    nextBoardAt = clock.now() + boardPauseMs
    send({ feed: 'all', before, upTo: toldAll, ops })
  }

  return {
    admit(link, feeds, actor) {
      partOlder(followers, link)
      followers.set(link, { feeds: new Set(feeds), actor, held: [] })
    },
    release(link) {
      const follower = followers.get(link)
      const held = follower?.held
      if (!follower || !held) return
      follower.held = null
      for (const message of held) link.tell(message)
    },
    leave: link => void followers.delete(link),
    links: () => [...followers.keys()],
    setActor(link, actor) {
      const follower = followers.get(link)
      if (follower) follower.actor = actor
    },
    note(news) {
      const seq = news.op[0]
      if (seq <= lastNoted) return
      lastNoted = seq
      forGroups.push(news)
      forAll.push(news.op)
      if (!isGroupTellPlanned) {
        isGroupTellPlanned = true
        clock.soon(tellGroups)
      }
      // A clock that is put back must not hold the boards up.
      const pauseMs = Math.min(boardPauseMs, Math.max(0, nextBoardAt - clock.now()))
      cancelBoard ??= clock.after(pauseMs, tellAll)
    },
    offer(message) {
      for (const [link, { actor, held }] of followers) if (actor?.role === 'desk' && !held) link.offered(message)
    },
    asked(concerns) {
      for (const [link, { actor, held }] of followers) if (actor && concerns(actor) && !held) link.asked({})
    },
    toldUpTo: feed => (feed === 'all' ? toldAll : Number.MAX_SAFE_INTEGER),
    tellGroups,
    tellAll,
    close: () => cancelBoard?.(),
  }
}

/** A phone has one link: after a nap it opens a new one while the older still looks alive. */
function partOlder(followers: Map<Link, Follower>, link: Link): void {
  for (const other of [...followers.keys()]) {
    if (other === link || !isSamePhone(other.shown, link.shown)) continue
    followers.delete(other)
    other.part('another link')
  }
}

const isSamePhone = (a: { device: DeviceId; keyHash: string }, b: { device: DeviceId; keyHash: string }): boolean =>
  a.device === b.device && a.keyHash === b.keyHash
