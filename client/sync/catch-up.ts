import type { OpId } from '#core/values/ids.ts'
import type { Feed } from '#shared/messages/feed.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import { type DownPart, exchangedAnswer, followedAnswer, pulledAnswer } from './answers.ts'
import type { Clock } from './clock.ts'
import type { Contact } from './contact.ts'
import { feedSeq, withFeedSeq } from './holding.ts'
import type { Keeper } from './keeper.ts'
import { receivedChange, takenAmong } from './received.ts'
import { forgetEra, lackedChange } from './sent.ts'

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
  /** Takes a new name for an op whose identity was taken. */
  readonly rename: (taken: OpId) => Promise<boolean>
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

const done: Outcome = { kind: 'done' }
const unanswered: Outcome = { kind: 'unanswered' }

export function createCatchUp({ keeper, contact, clock, rename }: CatchUpParts): CatchUp {
  const takeIn: CatchUp['takeIn'] = async part => {
    for (const taken of takenAmong(keeper.holding(), part.ops)) await rename(taken)
    await keeper.change(holding => {
      const change = receivedChange(holding, part.ops, clock.now())
      return { ...change, record: record => withFeedSeq(change.record?.(record) ?? record, part.feed, part.upTo) }
    })
  }

  const pull: CatchUp['pull'] = async (feed, limitMs) => {
    for (;;) {
      const after = feedSeq(keeper.holding().record, feed)
      const answer = pulledAnswer.safeParse(await contact.ask('pull', { feed, after }, limitMs))
      if (!answer.success || answer.data.kind === 'fault') return unanswered
      if (answer.data.kind === 'stranger') return answer.data
      await takeIn(answer.data.part)
      if (!answer.data.part.more) return done
    }
  }

  /** Sequences of another era say nothing of this one. */
  const enterEra = (era: string): Promise<void> =>
    keeper.change(({ record }) => (record.era === era ? null : { record: current => ({ ...forgetEra(current), era }) }))

  const exchangeOne = async (feed: Feed): Promise<Outcome> => {
    const here = [...keeper.holding().state.here]
    const answer = exchangedAnswer.safeParse(await contact.ask('exchange', { feed, here }))
    if (!answer.success || answer.data.kind === 'fault') return unanswered
    if (answer.data.kind === 'stranger') return answer.data
    const { data } = answer
    await enterEra(data.era)
    await takeIn(data.part)
    await keeper.change(holding => lackedChange(holding, feed, data.here))
    return data.part.more ? pull(feed) : done
  }

  const exchange: CatchUp['exchange'] = async feeds => {
    for (const feed of feeds) {
      const outcome = await exchangeOne(feed)
      if (outcome.kind !== 'done') return outcome
    }
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
