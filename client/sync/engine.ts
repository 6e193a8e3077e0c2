import { opIdOf } from '#core/log/op.ts'
import type { OpId } from '#core/values/ids.ts'
import type { Delay } from '#shared/messages/verdict.ts'
import type { SchemaOfKey } from '#shared/op.ts'
import { broughtChange } from './brought.ts'
import type { Clock } from './clock.ts'
import type { Foot } from './foot.ts'
import type { HeldOp } from './held-op.ts'
import type { Holding } from './holding.ts'
import { type Act, type Alone, createKeeper } from './keeper.ts'
import type { Link, Question } from './link.ts'
import type { LogRecord, LogStore, StoredLog } from './log-store.ts'
import type { Renaming } from './rename.ts'
import { createSession } from './session.ts'

export interface EngineParts {
  readonly store: LogStore
  readonly link: Link
  readonly clock: Clock
  /** How this phone takes a new name: asked for where it needs one. */
  readonly renaming: () => Promise<Renaming>
  readonly stored: StoredLog
  readonly isSaved: boolean
  readonly alone?: Alone
  /** The keys that a log of this kind has; an outing's unless given. */
  readonly schemaOf?: SchemaOfKey
  /** Something that is shown changed; `onDisk` when other pages of this phone can read it. */
  readonly changed: (onDisk: boolean) => void
}

type Noted = 'invite' | 'invites' | 'title' | 'day' | 'courseName' | 'label'

/** One open log on one phone: what it holds, what it says at its foot, and what can be done to it. */
export interface Engine {
  readonly holding: () => Holding
  readonly foot: () => Omit<Foot, 'canSleep'>
  /** Writes an act: first on the disk, then shown, then sent. Null when it had nothing to say. */
  readonly write: (act: Act) => Promise<HeldOp | null>
  /** Takes in ops that came by file or hand and sends them on; those held already are passed over. */
  readonly bring: (texts: readonly string[]) => Promise<void>
  /** Takes a refused op off the list; its number stays spent. */
  readonly forget: (op: OpId) => Promise<void>
  /** Notes beside the ops: an invite made or shown, the title to list the log by. */
  readonly note: (notes: Partial<Pick<LogRecord, Noted>>) => Promise<void>
  /** Asks the server for something that is no op; null when it cannot be asked now. */
  readonly ask: (question: Question, message: object) => Promise<unknown>
  readonly connect: () => void
  readonly disconnect: () => void
  readonly wake: () => void
  readonly reload: () => Promise<void>
  /** Done when nothing is left to be written. */
  readonly idle: () => Promise<void>
}

export function createEngine({ link, renaming, ...parts }: EngineParts): Engine {
  const { clock, changed } = parts
  const keeper = createKeeper(parts)
  const takeNewName = async (taken: readonly OpId[]): Promise<boolean> => {
    let isRenamed = false
    const rename = await renaming()
    await keeper.change(holding => {
      const change = rename(holding, taken)
      isRenamed = change !== null
      return change
    })
    return isRenamed
  }
  const session = createSession({ keeper, link, clock, rename: takeNewName, changed: () => changed(false) })
  const { holding, reload, idle } = keeper
  return {
    holding,
    idle,
    reload: async () => {
      await reload()
      session.kick()
    },
    foot: () => footOf(holding(), keeper.phone(), session),
    write: async act => {
      const held = await keeper.write(act)
      session.kick()
      return held
    },
    bring: async texts => {
      await keeper.change(current => broughtChange(current, texts))
      session.kick()
    },
    forget: id => keeper.change(({ ops }) => (ops.get(id)?.mark.kind === 'refused' ? { remove: [id] } : null)),
    note: notes => keeper.change(() => ({ record: record => ({ ...record, ...notes }) })),
    ask: session.ask,
    connect: session.connect,
    disconnect: session.disconnect,
    wake: session.wake,
  }
}

function footOf(
  { ops }: Holding,
  phone: Foot['phone'],
  session: Pick<ReturnType<typeof createSession>, 'foot' | 'offers'>,
): Omit<Foot, 'canSleep'> {
  const counts = new Map<Delay, number>()
  const refused: Foot['refused'][number][] = []
  let waiting = 0
  for (const { op, mark } of ops.values()) {
    if (mark.kind === 'refused') refused.push({ op, code: mark.code, path: mark.path })
    if (mark.kind === 'later') counts.set(mark.reason, (counts.get(mark.reason) ?? 0) + 1)
    if (mark.kind === 'waiting' || mark.kind === 'later') waiting++
  }
  const putOff = [...counts].map(([reason, count]) => ({ reason, count }))
  const offered = session.offers().filter(({ op }) => !ops.has(opIdOf(op)))
  return { phone, waiting, putOff, refused, offered, ...session.foot() }
}
