import type { LogId } from '#core/values/ids.ts'
import type { Deleted } from '#shared/messages/delete.ts'
import type { Exchange, Exchanged } from '#shared/messages/exchange.ts'
import type { Feed } from '#shared/messages/feed.ts'
import type { Follow, Followed } from '#shared/messages/follow.ts'
import type { OffersAnswer } from '#shared/messages/offers.ts'
import type { Pull, Pulled } from '#shared/messages/pull.ts'
import type { Push, Pushed } from '#shared/messages/push.ts'
import type { SnapshotAnswer } from '#shared/messages/snapshot.ts'
import type { Offered, Parting } from '#shared/messages/tell.ts'
import { type Actor, hasWholeLog } from '#shared/roles.ts'
import type { Shown } from '../access/shown.ts'
import { type Weight, weigh } from '../access/weigh.ts'
import type { LogHead, Store } from '../store/store.ts'
import type { Clock } from './clock.ts'
import { endOfFeed, hereRows, readMissing, readPart } from './feed-reader.ts'
import { createFolds } from './folds.ts'
import { createHalls } from './halls.ts'
import { type Link, type TellMany, tellEach } from './link.ts'
import { type PushDeps, pushOps } from './push.ts'

export interface RoomOptions {
  readonly store: Store
  readonly clock: Clock
  readonly tellMany?: TellMany
  /** An error that was answered as `busy`: for the server's own log. */
  readonly failed?: (error: unknown) => void
}

/** Every log's traffic, whatever carries it: messages in, answers out, and tells to the links that follow. */
export interface Room {
  follow(link: Link, message: Follow): Promise<Followed>
  pull(shown: Shown, message: Pull): Promise<Pulled>
  exchange(shown: Shown, message: Exchange): Promise<Exchanged>
  push(shown: Shown, message: Push): Promise<Pushed>
  snapshot(shown: Shown): Promise<SnapshotAnswer>
  offers(shown: Shown): Promise<OffersAnswer>
  weigh(shown: Shown): Promise<Weight>
  /** Tells those whom it concerns that somebody asks to be let in, or no longer does. */
  asked(log: LogId, concerns: (actor: Actor) => boolean): void
  leave(link: Link): void
  /** Deletes a log for good, by its desk; a tombstone stays, and its links are cut. */
  delete(shown: Shown): Promise<Deleted>
  /** Deletes logs in which nothing has been stored since then, milliseconds since 1970, some at a time; gives back which. */
  deleteIdle(before: number): Promise<readonly LogId[]>
  /** Logs that somebody follows. */
  openLogs(): number
  /** Cuts every link and says why. */
  close(why: Parting['why']): void
}

const actorOf = (weight: Weight): Actor | null => (weight.kind === 'member' ? weight.actor : null)
const isDesk = (weight: Weight): boolean => actorOf(weight)?.role === 'desk'

type Known = { readonly weight: Exclude<Weight, { kind: 'stranger' }>; readonly head: LogHead }
type Stranger = Extract<Weight, { kind: 'stranger' }>

export function createRoom({ store, clock, tellMany = tellEach, failed = () => {} }: RoomOptions): Room {
  const halls = createHalls(store, clock, tellMany)
  const folds = createFolds(store)

  const look = async (shown: Shown): Promise<Known | Stranger> => {
    try {
      const head = await store.headOf(shown.log)
      const weight = weigh(shown, head, await store.accessOf(shown.log, shown.device, shown.invite?.id ?? null))
      if (weight.kind === 'stranger' || head === null || head === 'deleted') return weight as Stranger
      return { weight, head }
    } catch (error) {
      failed(error)
      return { kind: 'stranger', why: 'busy' }
    }
  }
  const weightOf = async (shown: Shown): Promise<Weight> => {
    const found = await look(shown)
    return 'head' in found ? found.weight : found
  }

  /** After keys, invites or voids have changed: who may no longer listen is cut, who became desk hears of offers. */
  const recheck = async (log: LogId): Promise<void> => {
    for (const link of halls.find(log)?.links() ?? []) {
      const weight = await weightOf(link.shown)
      if (weight.kind !== 'stranger') halls.find(log)?.setActor(link, actorOf(weight))
      else if (weight.why !== 'busy') cut(link, weight.why === 'deleted' ? 'deleted' : 'voided')
    }
  }
  const cut = (link: Link, why: Parting['why']): void => {
    leave(link)
    link.part(why)
  }
  const leave = (link: Link): void => {
    halls.find(link.shown.log)?.leave(link)
    halls.tidy(link.shown.log)
  }

  /** After the answer to whoever deleted it. */
  const buried = (log: LogId): void => {
    folds.forget(log)
    clock.soon(() => void recheck(log).catch(failed))
  }

  /** The feed of all is read no further than it was told, so that the next batch joins on. */
  const upToOf = (log: LogId, feed: Feed): number => halls.find(log)?.toldUpTo(feed) ?? Number.MAX_SAFE_INTEGER

  const showOffers = async (link: Link): Promise<void> => {
    const ops = await offersFor(link.shown.log)
    if (ops.length > 0) link.offered({ ops })
  }
  const offersFor = async (log: LogId): Promise<Offered['ops']> =>
    (await store.offersOf(log)).map(({ text, carrier }) => ({ text, carrier }))

  const pushDeps: PushDeps = {
    store,
    now: clock.now,
    weigh: weightOf,
    stored: ({ log, scope, text, at, carrier }, seq) => halls.note(log, { scope, op: [seq, text, at, carrier] }),
    offered: (log, { text, carrier }) => halls.find(log)?.offer({ ops: [{ text, carrier }] }),
    accessChanged: log => clock.soon(() => void recheck(log).catch(failed)),
  }

  return {
    async follow(link, { era, feeds }) {
      const { log } = link.shown
      const found = await look(link.shown)
      if (!('head' in found)) return found
      let hall = await halls.open(log)
      // The last follower may have left meanwhile, and the hall with it.
      while (hall !== null && halls.find(log) !== hall) hall = await halls.open(log)
      if (hall === null) return { kind: 'stranger', why: 'log unknown' }
      hall.tellGroups()
      hall.admit(
        link,
        feeds.map(({ feed }) => feed),
        actorOf(found.weight),
      )
      // Whoever was taken out while the hall was being opened was in none to be cut from.
      const again = await look(link.shown)
      if (!('head' in again)) {
        leave(link)
        return again
      }
      const { head, weight } = again
      hall.setActor(link, actorOf(weight))
      // A phone that holds more than this store is ahead of it: the store has lost some, so they compare.
      const sameEra = era === head.era && feeds.every(({ after }) => after <= head.seq)
      const read = (feed: Follow['feeds'][number]) => readPart(store, log, { ...feed, upTo: upToOf(log, feed.feed) })
      const parts = sameEra ? await Promise.all(feeds.map(read)) : []
      clock.soon(() => {
        hall.release(link)
        if (isDesk(weight)) showOffers(link).catch(failed)
      })
      const { role, group } = weight.actor
      return { kind: 'followed', era: head.era, role, group, sameEra, parts }
    },
    async pull(shown, { feed, after }) {
      const found = await look(shown)
      if (!('head' in found)) return found
      return { kind: 'pulled', part: await readPart(store, shown.log, { feed, after, upTo: upToOf(shown.log, feed) }) }
    },
    async exchange(shown, message) {
      const found = await look(shown)
      if (!('head' in found)) return found
      halls.find(shown.log)?.tellAll()
      const ends = await store.endsOf(shown.log)
      if (ends === null) return { kind: 'stranger', why: 'log unknown' }
      const part = await readMissing(store, shown.log, message, endOfFeed(ends, message.feed))
      const here = hereRows(await store.hereOf(shown.log, message.feed))
      return { kind: 'exchanged', era: ends.era, part, here }
    },
    push: async (shown, { ops }) => ({ verdicts: await pushOps(pushDeps, shown, ops) }),
    async snapshot(shown) {
      const found = await look(shown)
      if (!('head' in found)) return found
      return folds.snapshot(shown.log, found.head.era, Math.min(found.head.seq, upToOf(shown.log, 'all')))
    },
    async offers(shown) {
      const found = await look(shown)
      if (!('head' in found)) return found
      return { kind: 'offers', ops: isDesk(found.weight) ? await offersFor(shown.log) : [] }
    },
    weigh: weightOf,
    asked: (log, concerns) => halls.find(log)?.asked(concerns),
    leave,
    async delete(shown) {
      const found = await look(shown)
      if (!('head' in found)) return found
      const actor = actorOf(found.weight)
      if (!actor || !hasWholeLog(actor)) return { kind: 'not deleted', why: 'not yours' }
      await store.bury(shown.log, clock.now())
      buried(shown.log)
      return { kind: 'deleted' }
    },
    async deleteIdle(before) {
      const logs = await store.buryIdle(before, clock.now())
      for (const log of logs) buried(log)
      return logs
    },
    openLogs: () => halls.all().length,
    close(why) {
      for (const hall of halls.all()) {
        for (const link of hall.links()) link.part(why)
        hall.close()
      }
    },
  }
}
