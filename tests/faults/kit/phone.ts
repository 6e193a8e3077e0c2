import { createHash } from 'node:crypto'
import { browserClock } from '#client/device/browser-clock.ts'
import { createAnyLink } from '#client/sync/any-link.ts'
import { createEngine, type Engine } from '#client/sync/engine.ts'
import type { Link } from '#client/sync/link.ts'
import type { InviteSecret, LogRecord } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { renamingWith } from '#client/sync/rename.ts'
import { seenUnder } from '#core/log/fold.ts'
import type { Fact } from '#core/log/op.ts'
import type { DeviceId, GroupId, InviteId, LogId } from '#core/values/ids.ts'
import type { Ends } from './ends.ts'
import type { History } from './history.ts'
import { pause } from './waiting.ts'

/** A phone of the product without its screen: the engine over the links that a browser would have, on real sockets. */
export interface FaultPhone {
  readonly name: string
  readonly engine: Engine
  /** Puts one more score in; resolves when it is on this phone. */
  readonly score: () => Promise<void>
  /** As often as thumbs could never do it, until it is stopped. */
  readonly keepScoring: () => { readonly stop: () => Promise<void> }
  readonly isSettled: () => boolean
}

const log = 'quillmoor' as LogId
const group = 'first' as GroupId
const deskInvite: InviteSecret = { id: 'desk-invite' as InviteId, secret: 'S'.repeat(24) }

/** A phone may say 50 things in a second; a score is one, and what comes of it may be another. */
const betweenScoresMs = 25
/** More is not put in while nothing can be sent: what matters is what is under way. */
const mostWaiting = 200

const hashOf = (secret: string): string => createHash('sha256').update(secret).digest('hex')
const secretOf = (name: string): string => `key-of-${name}`.padEnd(24, '-')
const grantFact = (name: string, invite: InviteId | null): Fact => ({
  key: `key/${name}`,
  value: { hash: hashOf(secretOf(name)), role: 'desk', group: null, label: name, invite },
  replaces: [],
})

/** Whoever looks into the server's log by itself. */
const reader = 'reader'
export const readerHeaders = { Authorization: `Bearer ${reader}:${secretOf(reader)}` }
export const logPath = `/api/logs/${log}/ops`
export const logFeed = `g/${group}`

const recordOf = (name: string): LogRecord => ({
  log,
  device: name as DeviceId,
  nextN: 1,
  nextPlace: 1,
  key: secretOf(name),
  label: name,
  invite: deskInvite,
  invites: [],
  era: null,
  feeds: [],
  title: null,
  day: null,
  courseName: null,
  at: 0,
})

export interface PhoneParts {
  readonly ends: Ends
  readonly history: History
  readonly url: string
  readonly name: string
  readonly isFounder?: boolean
}

export async function startPhone({ ends, history, url, name, isFounder = false }: PhoneParts): Promise<FaultPhone> {
  const link = createAnyLink({ url, clock: browserClock, fetch: (...request) => fetch(...request) })
  let renamed = 0
  const made = { device: () => `${name}-${++renamed}` as DeviceId, secret: () => 'N'.repeat(24), hash: hashOf }
  const engine = createEngine({
    store: createMemoryStore(),
    link: watched(link, history),
    clock: browserClock,
    renaming: async () => renamingWith(made),
    stored: { record: recordOf(name), ops: [] },
    isSaved: false,
    changed: () => undefined,
  })
  ends.add(engine.disconnect)
  history.watch(name, engine)
  await engine.write(() => ({
    scope: null,
    act: 'joined',
    facts: isFounder ? foundingFacts(name) : joiningFacts(name),
  }))
  engine.connect()
  return { name, engine, ...scoring(name, engine) }
}

function scoring(name: string, engine: Engine): Pick<FaultPhone, 'score' | 'keepScoring' | 'isSettled'> {
  let scores = 0
  const score = async (): Promise<void> => {
    const key = `g/${group}/score/${name}/${(++scores % 18) + 1}/1/card`
    const value = (scores % 9) + 1
    await engine.write(({ state }) => ({
      scope: group,
      act: 'score entered',
      facts: [{ key, value, replaces: seenUnder(state, key) }],
    }))
  }
  const keepScoring = () => {
    let goesOn = true
    const work = (async () => {
      while (goesOn) {
        if (engine.foot().waiting < mostWaiting) await score()
        await pause(Math.random() * 2 * betweenScoresMs)
      }
    })()
    return {
      stop: () => {
        goesOn = false
        return work
      },
    }
  }
  return { score, keepScoring, isSettled: () => engine.foot().waiting === 0 && engine.foot().link === 'live' }
}

const joiningFacts = (name: string): Fact[] => [grantFact(name, deskInvite.id)]

const foundingFacts = (name: string): Fact[] => [
  grantFact(name, null),
  grantFact(reader, null),
  { key: `group/${group}`, value: { name: 'First' }, replaces: [] },
  {
    key: `invite/${deskInvite.id}`,
    value: { hash: hashOf(deskInvite.secret), role: 'desk', group: null, label: 'Desk' },
    replaces: [],
  },
]

/** The link, with every answer to a push read by the history before the phone has it. */
const watched = (link: Link, history: History): Link => ({
  ...link,
  ask: async (question, message, limitMs) => {
    const answer = await link.ask(question, message, limitMs)
    if (question === 'push') history.answered((message as { readonly ops: readonly string[] }).ops, answer)
    return answer
  },
})
