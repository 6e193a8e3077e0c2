import type { LogId, OpId } from '#core/values/ids.ts'
import { createDoor } from '#server/access/door.ts'
import { shownOf } from '#server/access/shown.ts'
import { type Caller, type Counted, createDispatch, type Dispatch } from '#server/live/dispatch.ts'
import type { Link } from '#server/live/link.ts'
import { createRoom, type Room } from '#server/live/room.ts'
import { createWelcome } from '#server/live/welcome.ts'
import { type Database, loadDriver } from '#server/store/driver.ts'
import { migrate } from '#server/store/migrations.ts'
import { createSqliteStore } from '#server/store/sqlite.ts'
import type { Entry, Outcome, Store } from '#server/store/store.ts'
import type { Hello } from '#shared/messages/hello.ts'
import type { Sabotage } from './sabotage.ts'
import { type Life, startLife, type World } from './world.ts'

/** An op as the server holds it. */
export interface StoredText {
  readonly seq: number
  readonly text: string
}

/** The real room over the real store, in a process that can end and a database that outlives it. */
export interface Server {
  /** Of the process that runs; null while none does. */
  life(): Life | null
  start(): void
  /** The process ends between two events. */
  kill(): void
  /** Keeps the database as it stands. */
  backUp(): void
  /** Goes on from the backup, every log in a new era; false when there is none, or none with these ops. */
  restore(needed: ReadonlySet<OpId>): boolean
  /** Commits fail as on a full disk. */
  isFull: boolean
  /** Half of the messages are put off. */
  isBusy: boolean
  /** As a version that does not know the kind of fact of `newKey`. */
  isOld: boolean
  /** Milliseconds that its clock is wrong by. */
  clockOffMs: number
  /** Null while no process runs. */
  call(hello: Hello, link: Link | null, question: string, message: unknown): Promise<unknown> | null
  shown(hello: Hello): Link['shown']
  leave(link: Link): void
  /** What it holds of a log, by identity. */
  held(log: LogId): ReadonlyMap<OpId, StoredText>
  era(log: LogId): string | null
  room(): Room | null
}

/** What an old server does not know yet. */
export const newKey = 'day'

export interface ServerParts {
  readonly world: World
  readonly sabotage: Sabotage
  /** After a commit, for each op stored. */
  readonly stored: (entry: Entry) => void
}

interface Process {
  readonly life: Life
  readonly room: Room
  readonly dispatch: Dispatch
}

export async function createServer({ world, sabotage, stored }: ServerParts): Promise<Server> {
  const { DatabaseSync } = await loadDriver()
  const fresh = (): Database => {
    const made = new DatabaseSync(':memory:')
    migrate(made, world.now())
    return made
  }
  let database = fresh()
  let backup: Database | null = null
  let process: Process | null = null
  let eras = 0
  let mirror = new Map<LogId, Map<OpId, StoredText>>()

  const newEra = (): string => (sabotage === 'era' ? 'era00000' : `era${String(++eras).padStart(5, '0')}`)
  const readMirror = (): void => {
    mirror = new Map()
    const rows = database.prepare('SELECT log, device, n, seq, text FROM ops').all()
    for (const { log, device, n, seq, text } of rows as unknown as (StoredText & Entry)[]) {
      ofLog(log).set(`${device}.${n}` as OpId, { seq, text })
    }
  }
  const ofLog = (log: LogId): Map<OpId, StoredText> => {
    const known = mirror.get(log) ?? new Map<OpId, StoredText>()
    mirror.set(log, known)
    return known
  }

  /** The database as this process has it: a full disk shows when a transaction ends. */
  const openDatabase = (): Database =>
    new Proxy(database, {
      get(target, name) {
        if (name === 'exec') {
          return (sql: string) => {
            if (sql === 'COMMIT' && server.isFull) throw Object.assign(new Error('full'), { errcode: 13 })
            target.exec(sql)
          }
        }
        const found: unknown = Reflect.get(target, name)
        return typeof found === 'function' ? found.bind(target) : found
      },
    })

  const noted = (entry: Entry, outcome: Outcome): Outcome => {
    const id = `${entry.device}.${entry.n}` as OpId
    if (outcome.kind === 'stored') {
      ofLog(entry.log).set(id, { seq: outcome.seq, text: entry.text })
      stored(entry)
    }
    const isTaken = outcome.kind === 'refused' && outcome.code === 'identity taken'
    if (sabotage === 'content hash' && isTaken) {
      return { kind: 'already stored', seq: ofLog(entry.log).get(id)?.seq ?? 1 }
    }
    return outcome
  }

  const run = (): Process => {
    const life = startLife()
    const after = (delayMs: number, work: () => void) => world.after(delayMs, life, work)
    const soon = (work: () => void) => void after(0, work)
    const now = () => world.now() + server.clockOffMs
    const real = createSqliteStore(openDatabase(), () => undefined, {
      newEra,
      failed: () => undefined,
      timing: { now: world.now, soon: work => void after(world.dice.between(1, 4), work), after },
    })
    const store: Store = { ...real, append: async entry => noted(entry, await real.append(entry)) }
    const room = createRoom({ store, clock: { now, soon, after } })
    const welcome = createWelcome({ door: createDoor(now), store, weigh: room.weigh, changed: () => undefined })
    const dispatch = createDispatch({ room, welcome, counted, failed: () => undefined })
    return { life, room, dispatch }
  }
  const counted: Counted = async (_caller, answered, busy) =>
    server.isBusy && world.dice.chance(0.5) ? busy : answered()

  const end = (): void => {
    if (process) process.life.isOver = true
    process = null
  }

  const server: Server = {
    life: () => process?.life ?? null,
    start: () => {
      if (process === null) process = run()
    },
    kill: () => {
      end()
      if (sabotage !== 'durable') return
      loseLastOps(database)
      readMirror()
    },
    backUp: () => {
      backup = copyOf(database, fresh())
    },
    restore: needed => {
      if (backup === null || !hasAll(backup, needed)) return false
      end()
      database = copyOf(backup, fresh())
      for (const { log } of database.prepare('SELECT log FROM logs').all() as { log: string }[]) {
        database.prepare('UPDATE logs SET era = ? WHERE log = ?').run(newEra(), log)
      }
      readMirror()
      return true
    },
    isFull: false,
    isBusy: false,
    isOld: false,
    clockOffMs: 0,
    call: (hello, link, question, message) => {
      if (process === null) return null
      const caller: Caller = { shown: shownOf(hello), address: '192.0.2.1', link }
      const ask = process.dispatch
      return server.isOld ? askOld(ask, caller, question, message) : ask(caller, question, message)
    },
    shown: shownOf,
    leave: link => process?.room.leave(link),
    held: ofLog,
    era: log => {
      const row = database.prepare('SELECT era FROM logs WHERE log = ?').get(log) as { era: string } | undefined
      return row?.era ?? null
    },
    room: () => process?.room ?? null,
  }
  return server
}

/** An old server puts off what it does not know, and takes the rest. */
async function askOld(ask: Dispatch, caller: Caller, question: string, message: unknown): Promise<unknown> {
  if (question !== 'push') return ask(caller, question, message)
  const texts = (message as { readonly ops: readonly string[] }).ops
  const known = texts.filter(text => !text.includes(`"key":"${newKey}"`))
  const answer = known.length === 0 ? { verdicts: [] } : await ask(caller, question, { ops: known })
  const { verdicts } = answer as { readonly verdicts?: readonly unknown[] }
  if (verdicts === undefined) return answer
  const verdictOf = (text: string) =>
    known.includes(text) ? verdicts[known.indexOf(text)] : { kind: 'later', reason: 'newer' }
  return { verdicts: texts.map(verdictOf) }
}

const tables = ['logs', 'ops', 'grants', 'voids', 'offered', 'tombstones']

function copyOf(from: Database, to: Database): Database {
  for (const table of tables) {
    for (const row of from.prepare(`SELECT * FROM ${table}`).all() as Record<string, string | number | null>[]) {
      const columns = Object.keys(row)
      const marks = columns.map(() => '?').join(', ')
      to.prepare(`INSERT INTO ${table} (${columns.join(', ')}) VALUES (${marks})`).run(...Object.values(row))
    }
  }
  return to
}

function hasAll(database: Database, needed: ReadonlySet<OpId>): boolean {
  const rows = database.prepare("SELECT device || '.' || n AS id FROM ops").all() as { id: OpId }[]
  const held = new Set(rows.map(({ id }) => id))
  return [...needed].every(id => held.has(id))
}

/** What a disk forgets that was told to write and not to wait for it. */
function loseLastOps(database: Database): void {
  for (const { log, seq } of database.prepare('SELECT log, seq FROM logs').all() as { log: string; seq: number }[]) {
    const kept = Math.max(1, seq - 4)
    database.prepare('DELETE FROM ops WHERE log = ? AND seq > ?').run(log, kept)
    database.prepare('UPDATE logs SET seq = ? WHERE log = ?').run(kept, log)
  }
}
