import { nextTick, type Op, opIdOf, textOfOp } from '#core/log/op.ts'
import type { OpId } from '#core/values/ids.ts'
import { parseOp, type SchemaOfKey } from '#shared/op.ts'
import type { Clock } from './clock.ts'
import type { Foot } from './foot.ts'
import { type HeldOp, waitingMark } from './held-op.ts'
import { type Holding, holdingAfter, holdingOf } from './holding.ts'
import { afterDraw, type Change, type Draw, type LogStore, type StoredLog } from './log-store.ts'

/** What an act says, made from what is held at the moment of writing; null when there is nothing to say. */
export type Act = (holding: Holding) => Pick<Op, 'scope' | 'act' | 'facts'> | null

/** Holds one log in memory and on the disk, one task after the other: first on the disk, then in what is shown. */
export interface Keeper {
  readonly holding: () => Holding
  readonly phone: () => Foot['phone']
  /** The op as it stands on the disk, or in memory alone while the disk fails; null when nothing was written. */
  readonly write: (act: Act) => Promise<HeldOp | null>
  readonly change: (change: (holding: Holding) => Change | null) => Promise<void>
  /** Reads again what another page of this phone wrote. */
  readonly reload: () => Promise<void>
  /** Done when no task is left. */
  readonly idle: () => Promise<void>
}

export interface KeeperParts {
  readonly store: LogStore
  readonly clock: Clock
  readonly stored: StoredLog
  /** False for a new log that nothing has saved yet. */
  readonly isSaved: boolean
  /** Of the pages of one phone, who draws numbers from memory while the disk fails. */
  readonly alone?: Alone
  /** The keys that a log of this kind has; an outing's unless given. */
  readonly schemaOf?: SchemaOfKey
  /** Called after every change, `onDisk` when other pages can read it. */
  readonly changed: (onDisk: boolean) => void
}

/** A right that one page of a phone has at a time. */
export interface Alone {
  /** False while another page has it. */
  readonly take: () => Promise<boolean>
  readonly give: () => void
}

const onlyPage: Alone = { take: async () => true, give: () => undefined }

const retryDiskMs = 2_000

export function createKeeper(parts: KeeperParts): Keeper {
  const { store, clock, stored, isSaved, alone = onlyPage, schemaOf, changed } = parts
  let holding = holdingOf(stored)
  /** Acts that are not on the disk yet, and not shown. */
  let writing = 0
  /** What the disk lacks: everything is written again once it answers. */
  let isBehind = !isSaved
  /** Another page holds what the disk lacks: here nothing can be written until it is saved. */
  let isElsewhere = false
  const unremoved = new Set<OpId>()
  let retryPlanned = false
  let chain: Promise<unknown> = Promise.resolve()
  /** Something new is on the disk since the last word of it. */
  let isNews = false

  const enqueue = <T>(task: () => Promise<T>): Promise<T> => {
    const done = chain.then(task).finally(() => {
      const onDisk = isNews && !isBehind
      if (onDisk) isNews = false
      changed(onDisk)
    })
    chain = done.catch(() => undefined)
    return done
  }

  /** True when the disk holds all that memory does. */
  const catchUpDisk = async (): Promise<boolean> => {
    if (!isBehind) return true
    try {
      await store.save(holding.record, [...holding.ops.values()])
      if (unremoved.size > 0) await store.change(holding.record.log, { remove: [...unremoved] })
      unremoved.clear()
      isBehind = false
      isElsewhere = false
      alone.give()
      isNews = true
    } catch {
      planRetry()
    }
    return !isBehind
  }

  const planRetry = (): void => {
    isBehind = true
    if (retryPlanned) return
    retryPlanned = true
    clock.after(retryDiskMs, () => {
      retryPlanned = false
      void enqueue(async () => {
        await catchUpDisk()
      })
    })
  }

  /** Null where the disk fails and another page draws the numbers. */
  const append = async (make: (draw: Draw) => HeldOp): Promise<HeldOp | null> => {
    const made: HeldOp[] = []
    const makeNoted = (draw: Draw): HeldOp => {
      const held = make(draw)
      made.push(held)
      return held
    }
    if (await catchUpDisk()) {
      try {
        return await store.append(holding.record.log, makeNoted)
      } catch {
        planRetry()
      }
    }
    isElsewhere = !(await alone.take())
    if (isElsewhere) return null
    // The one that the disk may have taken all the same, else a new one from memory.
    return made.at(-1) ?? make(holding.record)
  }

  const writeNow = async (act: Act): Promise<HeldOp | null> => {
    const said = act(holding)
    if (said === null || said.facts.length === 0) return null
    assertSound(heldOfAct(holding, holding.record, clock.now(), said), schemaOf)
    isNews = true
    const { nextN } = holding.record
    const held = await append(draw => heldOfAct(holding, draw, clock.now(), said))
    if (held === null) return null
    holding = holdingAfter(holding, { put: [held], record: record => afterDraw(record, held) })
    // Another page of this phone has drawn a number in between: what it said goes before.
    if (!isBehind && held.op.n > nextN) {
      const loaded = await loadAgain()
      if (loaded) holding = holdingOf(loaded)
    }
    return held
  }

  const loadAgain = (): Promise<StoredLog | null> => store.load(holding.record.log).catch(() => null)

  return {
    holding: () => holding,
    phone: () => (isElsewhere ? 'elsewhere' : isBehind ? 'failing' : writing > 0 ? 'saving' : 'saved'),
    idle: async () => {
      await chain
    },
    write: act => {
      writing++
      const done = enqueue(() =>
        writeNow(act).finally(() => {
          writing--
        }),
      )
      changed(false)
      return done
    },
    change: make =>
      enqueue(async () => {
        const change = make(holding)
        if (change === null) return
        isNews = true
        try {
          if (await catchUpDisk()) await store.change(holding.record.log, change)
        } catch {
          planRetry()
        }
        if (isBehind) for (const id of change.remove ?? []) unremoved.add(id)
        holding = holdingAfter(holding, change)
        for (const held of change.put ?? []) unremoved.delete(opIdOf(held.op))
      }),
    reload: () =>
      enqueue(async () => {
        if (!(await catchUpDisk())) return
        const loaded = await loadAgain()
        if (loaded) holding = holdingAfter(holding, changeTo(holding, loaded))
      }),
  }
}

function heldOfAct(
  { state, record }: Holding,
  draw: Draw,
  at: number,
  said: Pick<Op, 'scope' | 'act' | 'facts'>,
): HeldOp {
  const op: Op = { ...said, log: record.log, device: draw.device, n: draw.nextN, tick: nextTick(state.tick), at }
  const place = Math.max(draw.nextPlace, record.nextPlace)
  return { op, text: textOfOp(op), seq: null, serverAt: null, carrier: null, mark: waitingMark, place }
}

/** An act that no server would store is a fault of ours, found before a number is spent on it. */
function assertSound({ text, op }: HeldOp, schemaOf: SchemaOfKey | undefined): void {
  const parsed = parseOp(text, schemaOf)
  if (!parsed.ok) throw new Error(`${op.act}: ${parsed.error.code} at ${parsed.error.path}`)
}

/** What makes a page's holding the one on the disk. */
function changeTo({ ops }: Holding, loaded: StoredLog): Change {
  const ids = new Set(loaded.ops.map(held => opIdOf(held.op)))
  return {
    put: loaded.ops.filter(held => !isSame(ops.get(opIdOf(held.op)), held)),
    remove: [...ops.keys()].filter(id => !ids.has(id)),
    record: () => loaded.record,
  }
}

const isSame = (a: HeldOp | undefined, b: HeldOp): boolean =>
  a !== undefined && a.text === b.text && a.seq === b.seq && a.mark.kind === b.mark.kind
