import type { GroupId, InviteId, LogId } from '#core/values/ids.ts'
import { createGolfers } from './golfers.ts'
import { createLedger, type Faults } from './ledger.ts'
import { comeIn, createPhone, hash, openPage, type Phone, type PhoneParts, type Seat } from './phone.ts'
import type { Sabotage } from './sabotage.ts'
import { createServer, type Server } from './server.ts'
import { createTroubles } from './trouble.ts'
import { createWorld, type World } from './world.ts'

/** What one seed came to. */
export interface RunResult extends Faults {
  readonly seed: number
  /** Acts that somebody said and saw. */
  readonly ops: number
  /** Answered to a phone as stored. */
  readonly acknowledged: number
  /** How often each kind of trouble was made. */
  readonly kinds: ReadonlyMap<string, number>
}

const troubledMs = 240_000
/** In so long everything must have found together again, in this many looks. */
const healMs = 150_000
const healLooks = 4

/** Plays a part of a round through everything that can go wrong; the same seed is the same run. */
export async function runSeed(seed: number, sabotage: Sabotage = 'none'): Promise<RunResult> {
  const world = createWorld(seed)
  const kinds = new Map<string, number>()
  const count = (kind: string): void => void kinds.set(kind, (kinds.get(kind) ?? 0) + 1)
  const changed = new Set<Phone>()
  const phones: Phone[] = []
  const server: Server = await createServer({ world, sabotage, stored: entry => ledger.stored(entry) })
  const ledger = createLedger(server, () => phones)
  const phoneParts: PhoneParts = {
    world,
    server,
    sabotage,
    watchOf: ledger.watchOf,
    changed: phone => void changed.add(phone),
  }
  const seats = seatsOf(world)
  phones.push(...seats.map(seat => createPhone(phoneParts, seat)))
  const golfers = createGolfers({ world, ledger, phones, count })
  const troubles = createTroubles({ world, server, ledger, golfers, phones, phoneParts, count })
  const each = (): void => {
    for (const phone of changed) ledger.checkPhone(phone)
    changed.clear()
  }

  server.start()
  for (const phone of phones) openPage(phoneParts, phone)
  for (const phone of phones) if (phone.name.endsWith('founder')) await found(phone, phones)
  for (const phone of phones) golfers.play(phone)
  const end = world.now() + troubledMs
  troubles.begin(end)
  await world.run(end, each)

  golfers.stop()
  troubles.end()
  for (let look = 0; look < healLooks; look++) {
    await world.run(world.now() + healMs / healLooks, each)
    for (const { page } of phones) {
      if (!page) continue
      // The desk takes in what was handed to it beyond its carrier's rights.
      const { offered } = page.engine.foot()
      if (offered.length > 0) void page.engine.bring(offered.map(({ text }) => text))
      void comeIn(page)
      page.engine.wake()
    }
  }
  await world.run(world.now() + healMs, each)
  ledger.settle(phones)
  for (const { page } of phones) if (page) page.life.isOver = true
  return { seed, ...ledger.faults, ops: ledger.ops, acknowledged: ledger.acknowledged, kinds }
}

/** Two to six phones of an outing of one to three groups, some of them on one player's card; and a stranger outing. */
function seatsOf({ dice }: World): Seat[] {
  const log = 'quillmoor' as LogId
  const groups = (['g1', 'g2', 'g3'] as GroupId[]).slice(0, dice.between(1, 3))
  const seat = (name: string, role: Seat['role'], group: GroupId | null = null, of: LogId = log): Seat => {
    const id = `${name}-invite` as InviteId
    return { name, log: of, role, group, invite: { id, secret: `secret-of-${name}`.padEnd(24, '_') } }
  }
  const scorers = Array.from({ length: dice.between(1, 4) }, (_, place) => {
    const group = groups[place % groups.length] ?? null
    return seat(`scorer${place}`, 'scorer', group)
  })
  const watcher = dice.chance(0.5) ? [seat('watcher', 'viewer')] : []
  const others = [seat('otherfounder', 'desk', null, 'fenwold' as LogId)]
  return [seat('founder', 'desk'), ...scorers, ...watcher, ...others]
}

/** The first act: the groups, and the invites that the others hold. */
async function found(founder: Phone, phones: readonly Phone[]): Promise<void> {
  const own = phones.filter(({ log }) => log === founder.log)
  const groups = [...new Set(own.flatMap(({ group }) => (group ? [group] : [])))]
  const invites = own.map(({ invite, role, group, name }) => ({
    key: `invite/${invite.id}`,
    value: { hash: hash(invite.secret), role, group, label: name },
    replaces: [],
  }))
  const named = (groups.length > 0 ? groups : ['g1']).map(group => ({
    key: `group/${group}`,
    value: { name: group.toUpperCase() },
    replaces: [],
  }))
  void founder.page?.engine.write(() => ({ scope: null, act: 'outing started', facts: [...named, ...invites] }))
}
