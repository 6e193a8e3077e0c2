import type { OpId } from '#core/values/ids.ts'
import type { Feed } from '#shared/messages/feed.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import { type DownPart, exchangedAnswer, followedAnswer, pulledAnswer } from './answers.ts'
import type { Clock } from './clock.ts'
import type { Contact } from './contact.ts'
import { feedSeq, type Holding, withFeedSeq } from './holding.ts'
import type { Keeper } from './keeper.ts'
import type { Change, LogRecord } from './log-store.ts'
import { receivedChange, takenAmong } from './received.ts'
import { type Compared, forgetEra, lackedChange } from './sent.ts'

/** What came of asking a server for what this phone lacks. */
export type Outcome =
  | { readonly kind: 'done' }
  /** No answer, or none of ours. */
  | { readonly kind: 'unanswered' }
  | { readonly kind: 'stranger'; readonly why: Stranger }

export interface CatchUpParts {
  readonly keeper: Keeper
  readonly contact: Contact
  readonly clock: Clock
  /** Takes a new name for ops whose identity was taken. */
  readonly rename: (taken: readonly OpId[]) => Promise<boolean>
}

/** Asks for what this phone lacks, and takes it in. */
export interface CatchUp {
  /** Follows feeds from where they are complete here; in another era than the server's it exchanges. */
  readonly follow: (feeds: readonly Feed[]) => Promise<Outcome>
  /** Each side names what it holds; what the server lacks is then to be sent. */
  readonly exchange: (feeds: readonly Feed[]) => Promise<Outcome>
  readonly pull: (feed: Feed, limitMs?: number) => Promise<Outcome>
  readonly takeIn: (part: Pick<DownPart, 'feed' | 'upTo' | 'ops'>) => Promise<void>
}

/** One feed, compared. */
interface Exchanged extends Compared {
  readonly era: string
  readonly upTo: number
}

const done: Outcome = { kind: 'done' }
const unanswered: Outcome = { kind: 'unanswered' }

export function createCatchUp({ keeper, contact, clock, rename }: CatchUpParts): CatchUp {
  const takeOps = async (ops: DownPart['ops'], note: (record: LogRecord) => LogRecord): Promise<void> => {
    const taken = takenAmong(keeper.holding(), ops)
    if (taken.length > 0) await rename(taken)
    await keeper.change(holding => {
      const change = receivedChange(holding, ops, clock.now())
      return { ...change, record: record => note(change.record?.(record) ?? record) }
    })
  }
  const takeIn: CatchUp['takeIn'] = ({ feed, upTo, ops }) => takeOps(ops, record => withFeedSeq(record, feed, upTo))

  const askPart = async (feed: Feed, after: number, limitMs?: number): Promise<DownPart | Outcome> => {
    const answer = pulledAnswer.safeParse(await contact.ask('pull', { feed, after }, limitMs))
    if (!answer.success || answer.data.kind === 'fault') return unanswered
    return answer.data.kind === 'stranger' ? answer.data : answer.data.part
  }

  const pull: CatchUp['pull'] = async (feed, limitMs) => {
    for (;;) {
      const part = await askPart(feed, feedSeq(keeper.holding().record, feed), limitMs)
      if ('kind' in part) return part
      await takeIn(part)
      if (!part.more) return done
    }
  }

  /** Takes in what this phone lacks of a feed, however much; its sequences are of an era that is not entered yet. */
  const takeMissing = async (first: DownPart): Promise<Outcome | { readonly upTo: number }> => {
    let part = first
    for (;;) {
      await takeOps(part.ops, record => record)
      if (!part.more) return { upTo: part.upTo }
      const next = await askPart(part.feed, part.upTo)
      if ('kind' in next) return next
      part = next
    }
  }

  const exchangeOne = async (feed: Feed): Promise<Outcome | Exchanged> => {
    const here = [...keeper.holding().state.here]
    const answer = exchangedAnswer.safeParse(await contact.ask('exchange', { feed, here }))
    if (!answer.success || answer.data.kind === 'fault') return unanswered
    if (answer.data.kind === 'stranger') return answer.data
    const { part, ...data } = answer.data
    const taken = await takeMissing(part)
    return 'kind' in taken ? taken : { feed, era: data.era, here: data.here, upTo: taken.upTo }
  }

  /**
   * The era is entered in the one change that notes what its server lacks, of every feed: a phone that ends in between
   * still knows that it has to compare.
   */
  const exchange: CatchUp['exchange'] = async feeds => {
    const all: Exchanged[] = []
    for (const feed of feeds) {
      const one = await exchangeOne(feed)
      if ('kind' in one) return one
      all.push(one)
    }
    const [first] = all
    if (first === undefined) return done
    // Put back meanwhile: what was compared first says nothing any more.
    if (all.some(({ era }) => era !== first.era)) return unanswered
    await keeper.change(holding => enterEra(holding, first.era, all))
    return done
  }

  const follow: CatchUp['follow'] = async feeds => {
    const { record } = keeper.holding()
    const wanted = feeds.map(feed => ({ feed, after: feedSeq(record, feed) }))
    const answer = followedAnswer.safeParse(await contact.ask('follow', { era: record.era, feeds: wanted }))
    if (!answer.success || answer.data.kind === 'fault') return unanswered
    if (answer.data.kind === 'stranger') return answer.data
    if (!answer.data.sameEra) return exchange(feeds)
    for (const part of answer.data.parts) {
      await takeIn(part)
      const outcome = part.more ? await pull(part.feed) : done
      if (outcome.kind !== 'done') return outcome
    }
    return done
  }

  return { follow, exchange, pull, takeIn }
}

/** Sequences of another era say nothing of this one. */
function enterEra(holding: Holding, era: string, compared: readonly Exchanged[]): Change {
  const feeds = compared.map(({ feed, upTo }) => [feed, upTo] as const)
  const { put } = lackedChange(holding, compared, holding.record.era !== era)
  // What is followed by HTTP is compared again and again, in the same era.
  const enter = (record: LogRecord): LogRecord => ({ ...(record.era === era ? record : forgetEra(record)), era })
  return {
    ...(put && { put }),
    record: record => feeds.reduce((next, [feed, upTo]) => withFeedSeq(next, feed, upTo), enter(record)),
  }
}
