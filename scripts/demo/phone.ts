import { createHash, randomBytes } from 'node:crypto'
import { setTimeout as wait } from 'node:timers/promises'
import type { Clock } from '#client/sync/clock.ts'
import { createEngine, type Engine } from '#client/sync/engine.ts'
import { factOfInvite, factOfKey, freshLog } from '#client/sync/fresh-log.ts'
import type { Inventions } from '#client/sync/inventions.ts'
import type { InviteSecret, LogRecord } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { renamingWith } from '#client/sync/rename.ts'
import { createSocketLink } from '#client/sync/socket-link.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
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
  const record = freshLog(inventions, log, name, Date.now())
  const phone = createPhone(server, record, name)
  const grant = { role: 'desk', group: null, label: 'Desk' } as const
  const facts = [
    ...factsOfPlain(demoOuting),
    factOfKey(inventions, record, { role: 'desk', group: null, invite: null }),
    factOfInvite(inventions, invite, grant),
  ]
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
  const record = { ...freshLog(inventions, log, name, Date.now()), invite }
  const phone = createPhone(server, record, name)
  const key = factOfKey(inventions, record, { role: 'desk', group: null, invite: invite.id })
  void write(phone.engine, 'phone joined', [key])
  phone.engine.connect()
  return phone
}

function createPhone(server: string, record: LogRecord, name: string): DemoPhone {
  const engine = createEngine({
    store: createMemoryStore(),
    link: createSocketLink({ url: server, clock, failed: () => undefined }),
    clock,
    renaming: async () => renamingWith(inventions),
    stored: { record, ops: [] },
    isSaved: false,
    changed: () => undefined,
  })
  return { name, engine, stop: () => engine.disconnect() }
}

/** Writes one act; each fact replaces what is seen under its key. */
export const write = (engine: Engine, act: string, facts: readonly NewFact[], scope: 'four' | null = null) =>
  engine.write(({ state }) => ({ scope: scope as never, act, facts: factsReplacing(state, facts) }))
