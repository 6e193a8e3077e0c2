import type { Outing } from '#core/outing/outing.ts'
import { type OutingView, viewAfter, viewOf } from '#core/outing/view.ts'
import type { LogId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import { browserClock } from '../device/browser-clock.ts'
import { untilFetched } from '../device/until-fetched.ts'
import { watchWaking } from '../device/wake.ts'
import { canSleep } from '../device/worker-registration.ts'
import { createAnyLink } from '../sync/any-link.ts'
import { createEngine, type Engine } from '../sync/engine.ts'
import { grantOf } from '../sync/feeds.ts'
import type { Foot } from '../sync/foot.ts'
import type { Holding } from '../sync/holding.ts'
import { createIdbStore } from '../sync/idb-store.ts'
import type { StoredLog } from '../sync/log-store.ts'
import type { Renaming } from '../sync/rename.ts'
import { closedOuting, type Me, type OutingStore, outingStore } from './outing-store.ts'
import { openTabs } from './tabs.ts'

export const logStore = createIdbStore()

/** Taking another name is no part of scoring a hole. */
const renaming = (): Promise<Renaming> => untilFetched(async () => (await import('./inventions.ts')).renaming)

/** The page's own fetch, which must not be called as a member of anything else. */
export const pageFetch: typeof fetch = (...request) => fetch(...request)

interface OpenOuting {
  readonly log: LogId
  readonly engine: Engine
  readonly close: () => void
}

let open: OpenOuting | null = null

/** The open outing's engine, if that outing is the open one. */
export const engineOf = (log: LogId): Engine | null => (open?.log === log ? open.engine : null)

export function currentEngine(): Engine {
  if (!open) throw new Error('no outing is open')
  return open.engine
}

export const isOpen = (): boolean => open !== null

/** Shows a log and keeps it in touch with its server. What was open before is closed. */
export function showLog(stored: StoredLog, isSaved: boolean): Engine {
  closeLog()
  const { log } = stored.record
  const link = createAnyLink({ url: location.origin, clock: browserClock, fetch: pageFetch })
  let tellWrote: () => void = () => undefined
  const changed = (onDisk: boolean): void => {
    if (open?.engine === engine) publish(engine)
    if (onDisk) tellWrote()
  }
  const alone = { take: () => tabs.alone.take(), give: () => tabs.alone.give() }
  const parts = { store: logStore, link, clock: browserClock, renaming, stored, isSaved, alone, changed }
  const engine = createEngine(parts)
  open = { log, engine, close: () => undefined }
  publish(engine)
  const tabs = openTabs(log, {
    wrote: () => void engine.reload(),
    leads: isLeading => {
      if (isLeading && hasAccess(engine.holding())) engine.connect()
      else engine.disconnect()
    },
  })
  tellWrote = tabs.tellWrote
  const unwatch = watchWaking({
    wake: () => {
      tabs.lead()
      if (hasAccess(engine.holding())) engine.wake()
    },
    sleep: engine.disconnect,
  })
  open = { log, engine, close: () => closeAll(engine, tabs.close, unwatch) }
  return engine
}

function closeAll(engine: Engine, closeTabs: () => void, unwatch: () => void): void {
  unwatch()
  closeTabs()
  engine.disconnect()
}

export function closeLog(): void {
  const closing = open
  open = null
  closing?.close()
  shown = null
  outingStore.setState(closedOuting, true)
}

/** A phone that opened a file and was let in by nobody asks no server. */
const hasAccess = ({ state, record }: Holding): boolean =>
  record.invite !== null || grantOf(state, record.device) !== null

function publish(engine: Engine): void {
  const holding = engine.holding()
  const before = outingStore.getState()
  const foot: Foot = { ...engine.foot(), canSleep: canSleep() }
  const next: OutingStore = {
    ...viewOfHolding(holding),
    log: holding.record.log,
    phase: 'open',
    history: historyOf(holding, before.history),
    me: meOf(holding, before.me),
    foot: isSame(foot, before.foot) ? before.foot : foot,
  }
  outingStore.setState(next, true)
  if (next.outing) noteTitle(engine, next.outing)
}

/** What is shown now, with what makes the next score quick. */
let shown: { readonly log: LogId; readonly view: OutingView } | null = null

function viewOfHolding({ record: { log }, state }: Holding): Pick<OutingStore, 'state' | 'outing' | 'levels'> {
  const view = shown?.log === log ? viewAfter(shown.view, state, isKnownValue) : viewOf(state, isKnownValue)
  shown = { log, view }
  const { outing, levels } = view
  return { state, outing, levels }
}

const histories = new WeakMap<Holding['ops'], OutingStore['history']>()

/** The same list as long as nothing changed in it. */
function historyOf({ ops }: Holding, before: OutingStore['history']): OutingStore['history'] {
  const known = histories.get(ops)
  if (known) return known
  const shown = [...ops.values()].filter(({ mark }) => mark.kind !== 'refused')
  const isUnchanged = shown.length === before.length && shown.every((held, index) => held === before[index])
  const history = isUnchanged ? before : shown
  histories.set(ops, history)
  return history
}

function meOf({ state, record }: Holding, before: Me | null): Me {
  const grant = grantOf(state, record.device)
  const me: Me = {
    device: record.device,
    role: grant?.role ?? null,
    group: grant?.group ?? null,
    label: grant?.label ?? record.label,
  }
  return before !== null && isSame(me, before) ? before : me
}

const isSame = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b)

/** What the list of outings says of it. */
function noteTitle(engine: Engine, { title, day, courseName }: Outing): void {
  const { record } = engine.holding()
  if (record.title === title && record.day === day && record.courseName === courseName) return
  void engine.note({ title, day, courseName })
}
