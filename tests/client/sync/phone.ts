import { createHash } from 'node:crypto'
import { createEngine, type Engine } from '#client/sync/engine.ts'
import type { LogStore } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { renamingWith } from '#client/sync/rename.ts'
import { seenUnder, standingsOf } from '#core/log/fold.ts'
import { groupOfKey } from '#core/log/op.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId, InviteId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { type FakeClock, settle } from './fake-clock.ts'
import { createFakeLink, type FakeLink } from './fake-link.ts'
import type { FakeServer } from './fake-server.ts'
import { makeRecord, quillmoor } from './make-held.ts'

export const hash = (secret: string): string => createHash('sha256').update(secret).digest('hex')

export const deskInvite = { id: 'desk-invite' as InviteId, secret: 'S'.repeat(22) }

/** A phone in a test: its engine over a memory store and a hand-moved link. */
export interface Phone {
  readonly engine: Engine
  readonly store: LogStore
  readonly link: FakeLink
  readonly say: (key: string, value: Json, act?: string) => Promise<void>
  /** Delivers everything under way until nothing moves any more. */
  readonly flush: () => Promise<void>
}

interface PhoneParts {
  readonly server: FakeServer
  readonly clock: FakeClock
  readonly device: string
  readonly store?: LogStore
  readonly isTold?: boolean
}

export async function startPhone({ server, clock, device, store = createMemoryStore(), isTold = true }: PhoneParts) {
  const link = createFakeLink(server, clock, { isTold })
  const fresh = makeRecord({ device: device as DeviceId, invite: deskInvite, key: device.padEnd(22, 'K') })
  if (!(await store.load(quillmoor))) await store.save(fresh, [])
  const stored = (await store.load(quillmoor)) ?? { record: fresh, ops: [] }
  let named = 0
  const inventions = { device: () => `${device}-${++named}` as DeviceId, secret: () => 'N'.repeat(22), hash }
  const engine = createEngine({
    store,
    link,
    clock,
    renaming: async () => renamingWith(inventions),
    stored,
    isSaved: true,
    changed: () => undefined,
  })
  engine.connect()
  const phone: Phone = {
    engine,
    store,
    link,
    say: async (key, value, act = 'said') => {
      await engine.write(({ state }) => ({
        scope: groupOfKey(key),
        act,
        facts: [{ key, value, replaces: seenUnder(state, key) }],
      }))
    },
    flush: () => flushAll([link]),
  }
  return phone
}

export async function flushAll(links: readonly FakeLink[]): Promise<void> {
  await settle()
  while (links.some(({ up, down }) => up.length + down.length > 0)) {
    for (const { up, down } of links) {
      up.shift()?.deliver()
      down.shift()?.deliver()
    }
    await settle()
  }
}

/** The founder's first act: one group, and the invite that everybody came by. */
export const found = (phone: Phone): Promise<unknown> =>
  phone.engine.write(() => ({
    scope: null,
    act: 'outing started',
    facts: [
      { key: makeKey('group', { group: 'first' }), value: { name: 'First' }, replaces: [] },
      {
        key: makeKey('invite', { invite: deskInvite.id }),
        value: { hash: hash(deskInvite.secret), role: 'desk', group: null, label: 'Desk' },
        replaces: [],
      },
    ],
  }))

export const valuesAt = ({ engine }: Phone, key: string): Json[] =>
  standingsOf(engine.holding().state, key).map(({ value }) => value)
