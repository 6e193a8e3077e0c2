import type { OpId } from '#core/values/ids.ts'
import type { Feed } from '#shared/messages/feed.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import type { Hello } from '#shared/messages/hello.ts'
import { protocolVersion } from '#shared/protocol.ts'
import { offeredMessage, partingMessage, type Tell, tellMessage } from './answers.ts'
import { createDoor } from './at-the-door.ts'
import { createCatchUp, type Outcome } from './catch-up.ts'
import type { Clock } from './clock.ts'
import { createContact } from './contact.ts'
import { feedsOf, grantOf } from './feeds.ts'
import type { Foot } from './foot.ts'
import { feedSeq } from './holding.ts'
import type { Keeper } from './keeper.ts'
import type { Link, Question } from './link.ts'
import { type Offer, offersOf } from './offers.ts'
import { createSender } from './sender.ts'
import { foundingLine, goneChange, lineOf, wholeChange } from './sent.ts'

/** What this phone may send: nothing, the whole log to a server without it, or what waits. */
type Door = 'shut' | 'bringing' | 'open'

export interface SessionParts {
  readonly keeper: Keeper
  readonly link: Link
  readonly clock: Clock
  /** Takes a new name for ops whose identity was taken; false when this phone cannot. */
  readonly rename: (taken: readonly OpId[]) => Promise<boolean>
  readonly changed: () => void
}

export interface Session {
  readonly connect: () => void
  readonly disconnect: () => void
  /** Something waits to be sent. */
  readonly kick: () => void
  /** The page is looked at, the network came back, or somebody tapped. */
  readonly wake: () => void
  readonly foot: () => Pick<Foot, 'link' | 'stranger' | 'askers' | 'spoken'>
  readonly offers: () => readonly Offer[]
  /** Asks the server for something that is no op; null when it cannot be asked now. */
  readonly ask: (question: Question, message: object) => Promise<unknown>
}

const probeLimitMs = 2_500
const wakeEveryMs = 2_000
/** To a server that has voided, deleted or outgrown us. */
const askAgainMs = 60_000

/** The dialogue with a server over one link: catches up, sends what waits, and takes in what it is told. */
export function createSession({ keeper, link, clock, rename, changed }: SessionParts): Session {
  let isWanted = false
  let door: Door = 'shut'
  let stranger: Stranger | null = null
  let followed: readonly Feed[] = []
  let offers: readonly Offer[] = []
  /** What was told while catching up: taken in after it. */
  let early: Tell[] = []
  let isCatchingUp = false
  let isStale = false
  let lastWake = Number.NEGATIVE_INFINITY

  const enter = (next: Door, why: Stranger | null = null): void => {
    door = next
    stranger = why
    changed()
  }

  const lost = (): void => {
    followed = []
    atTheDoor.lost()
    enter('shut')
  }

  const contact = createContact({ link, clock, changed, lost })
  const asking = createCatchUp({ keeper, contact, clock, rename })
  const sender = createSender({
    keeper,
    contact,
    rename,
    renamed: link.renew,
    line: tried => {
      if (door === 'shut' || isCatchingUp) return []
      return (door === 'bringing' ? foundingLine : lineOf)(keeper.holding(), tried)
    },
    emptied: () => {
      if (door === 'bringing') catchUp()
    },
  })

  const takeOffers = (known: readonly Offer[], ops: Parameters<typeof offersOf>[1]): void => {
    offers = offersOf(known, ops)
    changed()
  }
  const atTheDoor = createDoor({
    contact,
    clock,
    role: () => grantOf(keeper.holding().state, keeper.holding().record.device)?.role ?? null,
    isTold: link.isTold,
    // What is asked for is all there is.
    offered: ops => takeOffers([], ops),
    changed,
  })

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
    while (isStale && contact.isUp()) {
      isStale = false
      const feeds = wantedFeeds()
      const outcome = await (link.isTold() ? asking.follow : asking.exchange)(feeds)
      if (!contact.isUp()) break
      if (outcome.kind === 'done') caughtUp(feeds)
      else await heed(outcome)
    }
    isCatchingUp = false
    const waited = early
    early = []
    for (const tell of waited) hear(tell)
    sender.kick()
  }

  const caughtUp = (feeds: readonly Feed[]): void => {
    followed = feeds
    contact.succeeded()
    enter('open')
    atTheDoor.look()
    lookForFeeds()
  }

  /** What came in may have put this phone or one of its balls elsewhere. */
  const lookForFeeds = (): void => {
    if (followed.length > 0 && followed.join() !== wantedFeeds().join()) catchUp()
  }

  const heed = async (outcome: Exclude<Outcome, { kind: 'done' }>): Promise<void> => {
    if (outcome.kind === 'unanswered') return contact.retry(catchUp)
    const { why } = outcome
    if (why === 'log unknown') {
      // This phone brings it if it can; else another may have by the next time.
      if (door !== 'bringing') await keeper.change(wholeChange)
      enter('bringing')
      return contact.retry(catchUp)
    }
    if (why === 'deleted') await keeper.change(goneChange)
    enter('shut', why === 'busy' ? null : why)
    if (why === 'busy' || why === 'key unknown') contact.retry(catchUp)
    else contact.later(askAgainMs, catchUp)
  }

  const hear = (tell: Tell): void => {
    if (!contact.isUp()) return
    if (tell.before > feedSeq(keeper.holding().record, tell.feed)) void closeGap(tell.feed)
    else void asking.takeIn(tell).then(lookForFeeds)
  }

  const closeGap = async (feed: Feed): Promise<void> => {
    const outcome = await asking.pull(feed)
    if (outcome.kind === 'done') lookForFeeds()
    else if (contact.isUp()) await heed(outcome)
  }

  const told = (message: unknown): void => {
    const tell = tellMessage.safeParse(message)
    if (!tell.success) return
    if (isCatchingUp) early.push(tell.data)
    else hear(tell.data)
  }

  const offered = (message: unknown): void => {
    const parsed = offeredMessage.safeParse(message)
    if (parsed.success) takeOffers(offers, parsed.data.ops)
  }

  const parted = (message: unknown): void => {
    const parting = partingMessage.safeParse(message)
    const why = parting.success ? parting.data.why : null
    // Two pages of one phone would throw each other out for ever.
    if (why === 'another link') disconnect()
    if (why === 'deleted') void keeper.change(goneChange)
    if (why === 'voided' || why === 'deleted') enter('shut', why)
  }

  const hello = (): Hello => {
    const { log, device, key, invite } = keeper.holding().record
    return { protocol: protocolVersion, log, device, key, invite }
  }

  const up = (): void => {
    if (contact.came()) sender.afresh()
    changed()
    catchUp()
  }

  const down = (): void => {
    if (!contact.isUp()) return
    contact.went()
    lost()
  }

  const connect = (): void => {
    if (isWanted) return
    isWanted = true
    link.start(hello, { up, down, told, offered, asked: atTheDoor.look, parting: parted })
    changed()
  }

  const disconnect = (): void => {
    isWanted = false
    link.stop()
    contact.went()
    lost()
  }

  const wake = (): void => {
    if (!isWanted) {
      connect()
      return
    }
    // Of a clock that was put back nothing can be said.
    const sinceMs = clock.now() - lastWake
    if (sinceMs >= 0 && sinceMs < wakeEveryMs) return
    lastWake = clock.now()
    if (contact.isUp()) void probe()
    else link.renew()
  }

  /** A link that was asleep may look alive and carry nothing. */
  const probe = async (): Promise<void> => {
    const [feed] = followed
    if (feed === undefined) return catchUp()
    const outcome = await asking.pull(feed, probeLimitMs)
    if (outcome.kind === 'done') sender.kick()
    else if (outcome.kind === 'unanswered') link.renew()
    else await heed(outcome)
  }

  const word = (): Foot['link'] => {
    if (!isWanted) return 'away'
    if (stranger !== null) return 'stranger'
    return door === 'open' && !contact.isSlow() ? 'live' : 'connecting'
  }

  return {
    connect,
    disconnect,
    wake,
    kick: sender.kick,
    foot: () => ({ link: word(), stranger, askers: atTheDoor.askers(), spoken: atTheDoor.spoken() }),
    offers: () => offers,
    ask: async (question, message) => {
      const answer = contact.isUp() ? await contact.ask(question, message) : null
      atTheDoor.look()
      return answer
    },
  }
}
