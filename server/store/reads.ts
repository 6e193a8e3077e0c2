import { addNumber, type Here, type Ranges } from '#core/log/ranges.ts'
import type { Role } from '#core/outing/facts.ts'
import type { DeviceId, GroupId, LogId } from '#core/values/ids.ts'
import type { StoredOp } from '#shared/messages/feed.ts'
import type { Database } from './driver.ts'
import { type Granted, groupOfFeed, type LogHead, type Offer, type Store, type StoreTrouble } from './store.ts'
import { troubleOf } from './trouble.ts'

type Reads = Omit<Store, 'append' | 'offer' | 'dropOffer' | 'bury' | 'buryIdle' | 'trouble' | 'close'> & {
  trouble(): StoreTrouble | null
}

interface OpRow {
  readonly seq: number
  readonly text: string
  readonly at: number
  readonly carrier: DeviceId | null
}

const feedFilter = '(?2 IS NULL OR scope IS NULL OR scope = ?2)'

/** What is only read. Each is one short statement: a reader that stays open would stop the log's checkpoints. */
export function createReads(database: Database): Reads {
  const head = database.prepare('SELECT era, seq FROM logs WHERE log = ?')
  const tombstone = database.prepare('SELECT 1 FROM tombstones WHERE log = ?')
  const found = database.prepare('SELECT seq, text FROM ops WHERE log = ? AND device = ? AND n = ?')
  const ops = database.prepare(
    `SELECT seq, text, at, carrier FROM ops WHERE log = ?1 AND seq > ?3 AND seq <= ?4 AND ${feedFilter}
     ORDER BY seq LIMIT ?5`,
  )
  const ends = database.prepare('SELECT scope, max(seq) AS seq FROM ops WHERE log = ? GROUP BY scope')
  const here = database.prepare(`SELECT device, n FROM ops WHERE log = ?1 AND ${feedFilter} ORDER BY device, n`)
  const grant = database.prepare('SELECT hash, role, grp FROM grants WHERE log = ? AND kind = ? AND name = ?')
  const voided = database.prepare('SELECT 1 FROM voids WHERE log = ? AND kind = ? AND name = ?')
  const offers = database.prepare('SELECT device, n, text, carrier FROM offered WHERE log = ? ORDER BY rowid')

  const granted = (log: LogId, kind: string, name: string): Granted | null => {
    const row = grant.get(log, kind, name) as { hash: string; role: Role; grp: GroupId | null } | undefined
    return row ? { hash: row.hash, role: row.role, group: row.grp } : null
  }
  const isVoid = (log: LogId, kind: string, name: string) => voided.get(log, kind, name) !== undefined

  return {
    async headOf(log) {
      const row = head.get(log) as LogHead | undefined
      if (row) return { era: row.era, seq: row.seq }
      return tombstone.get(log) ? 'deleted' : null
    },
    find: async (log, device, n) => (found.get(log, device, n) as { seq: number; text: string } | undefined) ?? null,
    async read(log, { feed, after, upTo, limit, textLength }) {
      const rows = ops.all(log, groupOfFeed(feed), after, upTo, limit) as unknown as OpRow[]
      return cutToLength(rows, textLength)
    },
    async endsOf(log) {
      const row = head.get(log) as LogHead | undefined
      if (!row) return null
      const rows = ends.all(log) as unknown as { scope: GroupId | null; seq: number }[]
      const byGroup = new Map(rows.flatMap(({ scope, seq }) => (scope === null ? [] : [[scope, seq] as const])))
      return { era: row.era, seq: row.seq, noScope: rows.find(({ scope }) => scope === null)?.seq ?? 0, byGroup }
    },
    hereOf: async (log, feed) =>
      hereOfRows(here.all(log, groupOfFeed(feed)) as unknown as { device: DeviceId; n: number }[]),
    accessOf: async (log, device, invite) => ({
      key: granted(log, 'key', device),
      keyVoid: isVoid(log, 'key', device),
      invite: invite === null ? null : granted(log, 'invite', invite),
      inviteVoid: invite !== null && isVoid(log, 'invite', invite),
    }),
    offersOf: async log => (offers.all(log) as unknown as Offer[]).map(offer => ({ ...offer })),
    trouble() {
      try {
        head.get('')
        return null
      } catch (error) {
        return troubleOf(error)
      }
    },
  }
}

/** As many as fit, one at least. */
function cutToLength(rows: readonly OpRow[], textLength: number): StoredOp[] {
  const fitting: StoredOp[] = []
  let length = 0
  for (const { seq, text, at, carrier } of rows) {
    length += text.length
    if (fitting.length > 0 && length > textLength) break
    fitting.push([seq, text, at, carrier])
  }
  return fitting
}

function hereOfRows(rows: readonly { readonly device: DeviceId; readonly n: number }[]): Here {
  const here = new Map<DeviceId, Ranges>()
  for (const { device, n } of rows) here.set(device, addNumber(here.get(device) ?? [], n))
  return here
}
