import { createHash } from 'node:crypto'
import { createEngine, type Engine } from '#client/sync/engine.ts'
import { grantOf } from '#client/sync/feeds.ts'
import { factOfKey, freshLog } from '#client/sync/fresh-log.ts'
import type { Inventions } from '#client/sync/inventions.ts'
import type { InviteSecret } from '#client/sync/log-store.ts'
import { renamingWith } from '#client/sync/rename.ts'
import { seenUnder, standingsOf } from '#core/log/fold.ts'
import { groupOfKey } from '#core/log/op.ts'
import type { Grant } from '#core/outing/facts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId, GroupId, LogId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { factSchemas } from '#shared/facts.ts'
import { type Air, goodAir } from './air.ts'
import { createDisk, type Disk, type Kept } from './disk.ts'
import { createLink, type SimLink, type Watch } from './link.ts'
import type { Sabotage } from './sabotage.ts'
import type { Server } from './server.ts'
import { type Life, startLife, type World } from './world.ts'

export const hash = (secret: string): string => createHash('sha256').update(secret).digest('hex')

/** What a phone was invited to be. */
export interface Seat {
  readonly name: string
  readonly log: LogId
  readonly invite: InviteSecret
  readonly role: Grant['role']
  readonly group: GroupId | null
}

/** A phone: what it keeps through its pages' ends, and the page that runs. */
export interface Phone extends Seat {
  readonly disk: Disk
  readonly air: Air
  /** Milliseconds that its clock is wrong by. */
  clockOffMs: number
  /** The protocol that an old page says it speaks; null for this version's. */
  protocol: number | null
  page: Page | null
  /** The desk has taken it out: nothing is expected of it any more. */
  isVoided: boolean
}

export interface Page {
  readonly life: Life
  readonly engine: Engine
  readonly link: SimLink
}

export interface PhoneParts {
  readonly world: World
  readonly server: Server
  readonly sabotage: Sabotage
  readonly watchOf: (phone: Phone) => Watch
  /** What a phone shows may have changed. */
  readonly changed: (phone: Phone) => void
}

export function createPhone({ world, sabotage }: PhoneParts, seat: Seat): Phone {
  const disk = createDisk(world, sabotage === 'outbox' ? withoutOutbox : undefined)
  const more = { clockOffMs: 0, protocol: null, page: null, isVoided: false }
  return { ...seat, disk, air: goodAir(), ...more }
}

/** The planted fault: what waits to be sent is not kept. */
const withoutOutbox = ({ record, ops }: Kept): Kept => ({
  record,
  ops: new Map([...ops].filter(([, { mark }]) => mark.kind !== 'waiting')),
})

/** Opens the page on what the phone keeps; a phone that keeps nothing begins anew. */
export function openPage(parts: PhoneParts, phone: Phone): void {
  const { world, server, watchOf, changed } = parts
  const { disk, air } = phone
  const life = startLife()
  const clock = {
    now: () => world.now() + phone.clockOffMs,
    after: (delayMs: number, run: () => void) => world.after(delayMs, life, run),
    random: world.dice.next,
  }
  const text = (): string => [1, 2].map(() => world.dice.below(2 ** 31).toString(36)).join('')
  const inventions: Inventions = {
    device: () => `${phone.name}-${text()}` as DeviceId,
    secret: () => text().padEnd(22, '_'),
    hash,
  }
  const fresh = { ...freshLog(inventions, phone.log, phone.name, clock.now()), invite: phone.invite }
  const kept = disk.kept ?? { record: fresh, ops: new Map() }
  const stored = { record: kept.record, ops: [...kept.ops.values()].toSorted((a, b) => a.place - b.place) }
  const link = createLink({ world, server, air, life, protocol: () => phone.protocol, watch: watchOf(phone) })
  const isSaved = disk.kept !== null
  const store = disk.open(life)
  const engine = createEngine({
    store,
    link,
    clock,
    renaming: async () => renamingWith(inventions),
    stored,
    isSaved,
    changed: () => changed(phone),
  })
  phone.page = { life, engine, link }
  engine.connect()
}

/** The page ends between two events; what is on the disk stays. */
export function closePage(phone: Phone): void {
  if (!phone.page) return
  phone.page.life.isOver = true
  phone.page.link.die()
  phone.page = null
}

/** Gives this phone its own key once its invite stands in what it holds. True when it is in. */
export async function comeIn({ engine }: Page): Promise<boolean> {
  const { state, record } = engine.holding()
  if (grantOf(state, record.device) !== null) return true
  if (!record.invite) return false
  const standing = standingsOf(state, makeKey('invite', { invite: record.invite.id })).at(-1)
  const invite = factSchemas.invite.safeParse(standing?.value)
  if (!invite.success) return false
  const { role, group } = invite.data as Grant
  const fact = factOfKey({ hash } as Inventions, record, { role, group, invite: record.invite.id })
  await engine.write(() => ({ scope: null, act: 'phone joined', facts: [{ ...fact, replaces: [] }] }))
  return true
}

/** Says one thing, in place of all that this phone sees under the key. */
export const say = ({ engine }: Page, key: string, value: Json, act: string): Promise<unknown> =>
  engine.write(({ state }) => ({
    scope: groupOfKey(key),
    act,
    facts: [{ key, value, replaces: seenUnder(state, key) }],
  }))
