import { onTestFinished } from 'vitest'
import type { Clock } from '#server/live/clock.ts'
import type { Link } from '#server/live/link.ts'
import { createRoom, type Room } from '#server/live/room.ts'
import { openSqliteStore } from '#server/store/sqlite.ts'
import type { Store } from '#server/store/store.ts'
import type { Feed } from '#shared/messages/feed.ts'
import type { Follow } from '#shared/messages/follow.ts'
import type { Offered, Parting, Tell } from '#shared/messages/tell.ts'
import type { Verdict } from '#shared/messages/verdict.ts'
import { makeFolder } from './folder.ts'
import type { Phone } from './phone.ts'

/** A clock that a test moves by hand. */
export interface HandClock extends Clock {
  /** Does what is due soon, and then what is due within this time. */
  pass(ms?: number): Promise<void>
  /** Puts the clock to another time; what is due comes after as long as before. */
  putBack(ms: number): void
}

export function makeClock(): HandClock {
  let now = 1_000_000
  let soon: (() => void)[] = []
  let timers: { at: number; work: () => void }[] = []
  const settle = async () => {
    for (let turn = 0; turn < 5; turn++) {
      const due = soon
      soon = []
      for (const work of due) work()
      await new Promise(resolve => setImmediate(resolve))
    }
  }
  return {
    now: () => now,
    soon: work => void soon.push(work),
    after(delayMs, work) {
      const timer = { at: now + delayMs, work }
      timers.push(timer)
      return () => {
        timers = timers.filter(other => other !== timer)
      }
    },
    async pass(ms = 0) {
      await settle()
      now += ms
      const due = timers.filter(({ at }) => at <= now)
      timers = timers.filter(({ at }) => at > now)
      for (const { work } of due) work()
      await settle()
    },
    putBack(ms) {
      now -= ms
      timers = timers.map(({ at, work }) => ({ at: at - ms, work }))
    },
  }
}

/** A link that writes down what it hears. */
export interface HeardLink extends Link {
  readonly tells: Tell[]
  readonly offers: Offered[]
  /** How often it was told that who asks has changed. */
  asks: number
  readonly partings: Parting['why'][]
}

export function makeLink({ shown }: Phone): HeardLink {
  const [tells, offers, partings]: [Tell[], Offered[], Parting['why'][]] = [[], [], []]
  const link: HeardLink = {
    shown,
    tells,
    offers,
    partings,
    asks: 0,
    tell: message => void tells.push(message),
    offered: message => void offers.push(message),
    asked: () => void link.asks++,
    part: why => void partings.push(why),
  }
  return link
}

export interface RoomSetup {
  readonly room: Room
  readonly store: Store
  readonly clock: HandClock
  /** Where the store lies, to be read past it. */
  readonly folder: string
  push(phone: Phone, ...texts: readonly string[]): Promise<readonly Verdict[]>
  /** Follows these feeds from where the log stands, so that every tell joins on. */
  follow(phone: Phone, ...feeds: readonly Feed[]): Promise<HeardLink>
  readonly era: () => Promise<string>
}

export async function openRoom(log: Phone['hello']['log']): Promise<RoomSetup> {
  const clock = makeClock()
  let eras = 0
  const newEra = () => `era${String(++eras).padStart(8, '0')}`
  const folder = makeFolder()
  const options = { folder, now: clock.now, newEra, warn: () => {}, failed: () => {} }
  const store = await openSqliteStore(options)
  onTestFinished(() => store.close())
  const room = createRoom({ store, clock })
  const era = async () => {
    const head = await store.headOf(log)
    if (head === null || head === 'deleted') throw new Error('no log')
    return head.era
  }
  return {
    room,
    store,
    clock,
    folder,
    era,
    push: async ({ shown }, ...texts) => (await room.push(shown, { ops: [...texts] })).verdicts,
    async follow(phone, ...feeds) {
      const link = makeLink(phone)
      const follow: Follow = { era: await era(), feeds: feeds.map(feed => ({ feed, after: 0 })) }
      const answer = await room.follow(link, follow)
      if (answer.kind !== 'followed') throw new Error(`not followed: ${answer.why}`)
      await clock.pass()
      return link
    },
  }
}
