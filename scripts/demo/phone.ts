import { createHash, randomBytes } from 'node:crypto'
import { setTimeout as wait } from 'node:timers/promises'
import type { Clock } from '#client/sync/clock.ts'
import { createEngine, type Engine, type Inventions } from '#client/sync/engine.ts'
import type { InviteSecret, LogRecord } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { createSocketLink } from '#client/sync/socket-link.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import type { Grant } from '#core/outing/facts.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId, InviteId, LogId } from '#core/values/ids.ts'
import { demoOuting } from './field.ts'

/** A phone without a screen: the page's own engine over the page's own link. */
export interface DemoPhone {
  readonly name: string
  readonly engine: Engine
  readonly stop: () => void
}

export interface Founder extends DemoPhone {
  readonly server: string
  readonly log: LogId
  readonly invite: InviteSecret
  readonly watchLink: string
}

const createId = (): string => randomBytes(10).toString('hex')

const inventions: Inventions = {
  device: () => createId() as DeviceId,
  secret: () => randomBytes(16).toString('base64url'),
  hash: secret => createHash('sha256').update(secret).digest('hex'),
}

const clock: Clock = {
  now: () => Date.now(),
  random: () => Math.random(),
  after: (delayMs, run) => {
    const timer = setTimeout(run, delayMs)
    return () => clearTimeout(timer)
  },
}

/** The phone that starts the outing; it can be watched, and scored on, by the link. */
export async function startDemo(server: string, name: string): Promise<Founder> {
  const log = createId() as LogId
  const invite: InviteSecret = { id: createId() as InviteId, secret: inventions.secret() }
  const phone = createPhone(server, recordOf(log, name, null), name)
  const grant = { role: 'desk', group: null, label: 'Desk' } as const
  const facts = [...factsOfPlain(demoOuting), keyFact(phone.engine, null), inviteFact(invite, grant)]
  await write(phone.engine, 'outing started', facts)
  phone.engine.connect()
  await whenOnServer(phone)
  return { ...phone, server, log, invite, watchLink: `${server}/#/join/${log}/${invite.id}/${invite.secret}` }
}

/** An invite is of use once the server holds it. */
export async function whenOnServer({ engine }: DemoPhone): Promise<void> {
  while (engine.foot().waiting > 0) await wait(50)
}

/** Another phone that followed the invite; it catches up by itself. */
export function joinDemo({ server, log, invite }: Founder, name: string): DemoPhone {
  const phone = createPhone(server, recordOf(log, name, invite), name)
  void write(phone.engine, 'phone joined', [keyFact(phone.engine, invite.id)])
  phone.engine.connect()
  return phone
}

function createPhone(server: string, record: LogRecord, name: string): DemoPhone {
  const engine = createEngine({
    store: createMemoryStore(),
    link: createSocketLink({ url: server, clock, failed: () => undefined }),
    clock,
    inventions,
    stored: { record, ops: [] },
    isSaved: false,
    changed: () => undefined,
  })
  return { name, engine, stop: () => engine.disconnect() }
}

/** Writes one act; each fact replaces what is seen under its key. */
export const write = (engine: Engine, act: string, facts: readonly NewFact[], scope: 'four' | null = null) =>
  engine.write(({ state }) => ({ scope: scope as never, act, facts: factsReplacing(state, facts) }))

function keyFact(engine: Engine, invite: InviteId | null): NewFact {
  const { device, key, label } = engine.holding().record
  return {
    key: makeKey('key', { device }),
    value: { role: 'desk', group: null, label, invite, hash: inventions.hash(key) },
  }
}

const inviteFact = ({ id, secret }: InviteSecret, grant: Omit<Grant, 'hash'>): NewFact => ({
  key: makeKey('invite', { invite: id }),
  value: { ...grant, hash: inventions.hash(secret) },
})

const recordOf = (log: LogId, label: string, invite: InviteSecret | null): LogRecord => ({
  log,
  device: inventions.device(),
  nextN: 1,
  nextPlace: 1,
  key: inventions.secret(),
  label,
  invite,
  invites: [],
  era: null,
  feeds: [],
  title: null,
  day: null,
  courseName: null,
  at: Date.now(),
})
