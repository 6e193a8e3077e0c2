import { opIdOf } from '#core/log/op.ts'
import type { OpId } from '#core/values/ids.ts'
import { limits } from '#shared/limits.ts'
import type { Feed } from '#shared/messages/feed.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import type { Hello } from '#shared/messages/hello.ts'
import { protocolVersion } from '#shared/protocol.ts'
import {
  type DownPart,
  exchangedAnswer,
  followedAnswer,
  offeredMessage,
  partingMessage,
  pulledAnswer,
  pushedAnswer,
  tellMessage,
} from './answers.ts'
import { backOffMs, type Clock } from './clock.ts'
import { feedsOf } from './feeds.ts'
import type { Foot } from './foot.ts'
import { nextFrame } from './frames.ts'
import type { HeldOp } from './held-op.ts'
import { feedSeq, withFeedSeq } from './holding.ts'
import type { Keeper } from './keeper.ts'
import type { Link, Question } from './link.ts'
import { type Offer, offersOf } from './offers.ts'
import { receivedChange, takenAmong } from './received.ts'
import { forgetEra, foundingLine, isSoon, lackedChange, lineOf, type Sent, sentChange, wholeChange } from './sent.ts'

/** How this phone stands with the server: what it may send, and what the foot says. */
type Door = 'shut' | 'bringing' | 'open'

export interface SessionParts {
  readonly keeper: Keeper
  readonly link: Link
  readonly clock: Clock
  /** Takes a new name for an op whose identity was taken; false when this phone cannot. */
  readonly rename: (taken: OpId) => Promise<boolean>
  readonly changed: () => void
}

export interface Session {
  readonly connect: () => void
  readonly disconnect: () => void
  /** Something waits to be sent. */
  readonly kick: () => void
  /** The page is looked at, the network came back, or somebody tapped. */
  readonly wake: () => void
  readonly foot: () => Pick<Foot, 'link' | 'stranger'>
  readonly offers: () => readonly Offer[]
}

const askLimitMs = 8_000
const probeLimitMs = 2_500
/** Without an answer for so long the foot no longer says that the link is live. */
const patienceMs = 3_000
const wakeEveryMs = 2_000
const tryAgainMs = 60_000

/** The dialogue with a server over one link: catches up, sends what waits, and takes in what it is told. */
export function createSession({ keeper, link, clock, rename, changed }: SessionParts): Session {
  let isUp = false
  let isWanted = false
  let door: Door = 'shut'
  let stranger: Stranger | null = null
  let isSlow = false
  let followed: readonly Feed[] = []
  let offers: readonly Offer[] = []
  /** What was told while catching up: taken in after it. */
  let early: unknown[] = []
  let failures = 0
  let frameMost: number = limits.opsInPush
  let lastWake = Number.NEGATIVE_INFINITY
  let isCatchingUp = false
  let isStale = false
  let isSending = false
  let isPaused = false
  /** Connections are counted: an answer of an earlier one changes nothing but ops. */
  let connection = 0
  const tried = new Set<OpId>()

  const say = (change: () => void): void => {
    change()
    changed()
  }

  const retry = (): void => {
    failures++
    const at = connection
    clock.after(backOffMs(failures, clock.random()), () => {
      if (at === connection && isWanted) (isUp ? catchUp : link.renew)()
    })
  }

  /** The answer, or null when none came: what was asked may have been done all the same. */
  const ask = async (question: Question, message: object, limitMs = askLimitMs): Promise<unknown> => {
    const at = connection
    let isAnswered = false
    clock.after(patienceMs, () => {
      if (!isAnswered && at === connection) say(() => (isSlow = true))
    })
    try {
      const answer = await link.ask(question, message, limitMs)
      if (isSlow) say(() => (isSlow = false))
      return at === connection ? answer : null
    } catch {
      // The link stands and does not carry: a new one is the only cure.
      if (at === connection && isUp) {
        say(down)
        retry()
      }
      return null
    } finally {
      isAnswered = true
    }
  }

  const takeIn = async (part: Pick<DownPart, 'feed' | 'upTo' | 'ops'>): Promise<void> => {
    for (const taken of takenAmong(keeper.holding(), part.ops)) await rename(taken)
    await keeper.change(holding => {
      const change = receivedChange(holding, part.ops, clock.now())
      return { ...change, record: record => withFeedSeq(change.record?.(record) ?? record, part.feed, part.upTo) }
    })
    if (followed.length > 0 && !isSameFeeds(followed, wantedFeeds())) catchUp()
  }

  const wantedFeeds = (): readonly Feed[] => {
    const { state, record } = keeper.holding()
    return feedsOf(state, record.device)
  }

  const catchUp = (): void => {
    isStale = true
    if (!isCatchingUp) void runCatchUp()
  }

  const runCatchUp = async (): Promise<void> => {
    isCatchingUp = true
    while (isStale && isUp) {
      isStale = false
      const feeds = wantedFeeds()
      const isDone = link.isTold() ? await follow(feeds) : await exchangeAll(feeds)
      if (!isDone) continue
      followed = feeds
      if (!isSameFeeds(feeds, wantedFeeds())) isStale = true
      failures = 0
      say(() => open())
    }
    isCatchingUp = false
    const waited = early
    early = []
    for (const message of waited) told(message)
    kick()
  }

  const open = (): void => {
    door = 'open'
    stranger = null
  }

  const follow = async (feeds: readonly Feed[]): Promise<boolean> => {
    const { record } = keeper.holding()
    const wanted = feeds.map(feed => ({ feed, after: feedSeq(record, feed) }))
    const answer = followedAnswer.safeParse(await ask('follow', { era: record.era, feeds: wanted }))
    if (!answer.success || answer.data.kind === 'fault') return unanswered()
    if (answer.data.kind === 'stranger') return estranged(answer.data.why)
    if (!answer.data.sameEra) return exchangeAll(feeds)
    for (const part of answer.data.parts) {
      await takeIn(part)
      if (part.more && !(await pullOn(part.feed))) return false
    }
    return true
  }

  const pullOn = async (feed: Feed, limitMs = askLimitMs): Promise<boolean> => {
    for (;;) {
      const after = feedSeq(keeper.holding().record, feed)
      const answer = pulledAnswer.safeParse(await ask('pull', { feed, after }, limitMs))
      if (!answer.success || answer.data.kind === 'fault') return unanswered()
      if (answer.data.kind === 'stranger') return estranged(answer.data.why)
      await takeIn(answer.data.part)
      if (!answer.data.part.more) return true
    }
  }

  const exchangeAll = async (feeds: readonly Feed[]): Promise<boolean> => {
    for (const feed of feeds) if (!(await exchange(feed))) return false
    return true
  }

  const exchange = async (feed: Feed): Promise<boolean> => {
    const here = [...keeper.holding().state.here]
    const answer = exchangedAnswer.safeParse(await ask('exchange', { feed, here }))
    if (!answer.success || answer.data.kind === 'fault') return unanswered()
    if (answer.data.kind === 'stranger') return estranged(answer.data.why)
    const { data } = answer
    await enterEra(data.era)
    await takeIn(data.part)
    await keeper.change(holding => lackedChange(holding, feed, data.here))
    return data.part.more ? pullOn(feed) : true
  }

  /** Sequences of another era say nothing of this one. */
  const enterEra = (era: string): Promise<void> =>
    keeper.change(({ record }) => (record.era === era ? null : { record: current => ({ ...forgetEra(current), era }) }))

  const unanswered = (): false => {
    if (isUp) retry()
    return false
  }

  const estranged = async (why: Stranger): Promise<boolean> => {
    if (why === 'log unknown' && door !== 'bringing') {
      await keeper.change(wholeChange)
      say(() => {
        door = 'bringing'
        stranger = null
      })
      return false
    }
    say(() => {
      door = 'shut'
      stranger = why === 'busy' ? null : why
    })
    if (['busy', 'key unknown', 'log unknown'].includes(why)) retry()
    else later(tryAgainMs, catchUp)
    return false
  }

  const later = (delayMs: number, run: () => void): void => {
    const at = connection
    clock.after(delayMs, () => {
      if (at === connection && isUp) run()
    })
  }

  const kick = (): void => {
    if (!isSending && !isCatchingUp) void send()
  }

  const send = async (): Promise<void> => {
    isSending = true
    while (isUp && door !== 'shut' && !isPaused && !isCatchingUp) {
      const line = (door === 'bringing' ? foundingLine : lineOf)(keeper.holding(), tried)
      const frame = nextFrame(line, frameMost)
      if (frame.length > 0 && (await push(frame))) continue
      if (frame.length === 0 && door === 'bringing') catchUp()
      break
    }
    isSending = false
  }

  const push = async (frame: readonly HeldOp[]): Promise<boolean> => {
    const at = connection
    const answer = pushedAnswer.safeParse(await ask('push', { ops: frame.map(({ text }) => text) }))
    if (!answer.success || answer.data.verdicts.length !== frame.length) {
      frameMost = Math.max(1, Math.floor(frame.length / 2))
      if (at === connection) unanswered()
      return false
    }
    frameMost = Math.min(limits.opsInPush, frameMost * 2)
    await weigh(frame.map((held, index) => ({ held, verdict: answer.data.verdicts[index] ?? missing })))
    return true
  }

  const weigh = async (sent: readonly Sent[]): Promise<void> => {
    const { device } = keeper.holding().record
    const isOwnTaken = ({ held, verdict }: Sent): boolean =>
      held.op.device === device && verdict.kind === 'refused' && verdict.code === 'identity taken'
    const noted: Sent[] = []
    for (const one of sent) {
      if (isOwnTaken(one) && (await rename(opIdOf(one.held.op)))) continue
      noted.push(one)
      if (one.verdict.kind === 'later' && !isSoon(one.verdict)) putOff(opIdOf(one.held.op))
    }
    await keeper.change(holding => sentChange(holding, noted))
    if (sent.some(({ verdict }) => isSoon(verdict))) pause()
    else failures = 0
    if (keeper.holding().record.device !== device) link.renew()
  }

  const putOff = (id: OpId): void => {
    if (tried.size === 0) {
      later(tryAgainMs, () => {
        tried.clear()
        kick()
      })
    }
    tried.add(id)
  }

  const pause = (): void => {
    isPaused = true
    failures++
    later(backOffMs(failures, clock.random()), () => {
      isPaused = false
      kick()
    })
  }

  const up = (): void => {
    const isNew = !isUp
    isUp = true
    if (isNew) {
      connection++
      isPaused = false
      tried.clear()
    }
    say(() => (isSlow = false))
    catchUp()
  }

  const down = (): void => {
    isUp = false
    door = 'shut'
    stranger = null
    followed = []
    connection++
  }

  const told = (message: unknown): void => {
    if (isCatchingUp) {
      early.push(message)
      return
    }
    const tell = tellMessage.safeParse(message)
    if (!tell.success || !isUp) return
    const { feed, before } = tell.data
    if (before > feedSeq(keeper.holding().record, feed)) void heardGap(feed)
    else void takeIn(tell.data)
  }

  /** Own ops on their way count in the feed before their verdict is noted here: look again once it is. */
  const heardGap = async (feed: Feed): Promise<void> => {
    await pullOn(feed)
    kick()
  }

  const parted = (message: unknown): void => {
    const parting = partingMessage.safeParse(message)
    if (!parting.success) return
    const { why } = parting.data
    if (why === 'another link') disconnect()
    if (why === 'voided' || why === 'deleted') {
      say(() => {
        door = 'shut'
        stranger = why
      })
    }
  }

  const hello = (): Hello => {
    const { log, device, key, invite } = keeper.holding().record
    return { protocol: protocolVersion, log, device, key, invite }
  }

  const connect = (): void => {
    if (isWanted) return
    isWanted = true
    link.start(hello, {
      up,
      down: () => {
        if (isUp) say(down)
      },
      told,
      offered: message => {
        const offered = offeredMessage.safeParse(message)
        if (offered.success) say(() => (offers = offersOf(offers, offered.data.ops)))
      },
      parting: parted,
    })
    changed()
  }

  const disconnect = (): void => {
    isWanted = false
    link.stop()
    say(() => {
      isUp = false
      door = 'shut'
      followed = []
      connection++
    })
  }

  const wake = (): void => {
    if (!isWanted) {
      connect()
      return
    }
    if (clock.now() - lastWake < wakeEveryMs) return
    lastWake = clock.now()
    const [feed] = followed
    if (!isUp) link.renew()
    else if (feed === undefined) catchUp()
    else {
      void pullOn(feed, probeLimitMs).then(isThere => {
        if (isThere) kick()
        else link.renew()
      })
    }
  }

  const word = (): Foot['link'] => {
    if (!isWanted) return 'away'
    if (stranger !== null) return 'stranger'
    return isUp && door === 'open' && !isSlow ? 'live' : 'connecting'
  }

  return { connect, disconnect, kick, wake, foot: () => ({ link: word(), stranger }), offers: () => offers }
}

const missing: Sent['verdict'] = { kind: 'later', reason: 'newer' }

const isSameFeeds = (a: readonly Feed[], b: readonly Feed[]): boolean => a.join(' ') === b.join(' ')
