import { emptyLog } from '#core/log/fold.ts'
import { opIdOf } from '#core/log/op.ts'
import { undoOf } from '#core/log/undo.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import type { Plan } from '#core/plan/plan.ts'
import { planOf } from '#core/plan/plan-of.ts'
import type { LogId } from '#core/values/ids.ts'
import { isKnownPlayerValue, schemaInPlayerLog } from '#shared/player-facts.ts'
import { browserClock } from '../device/browser-clock.ts'
import { createId } from '../device/random-ids.ts'
import { forgetAll } from '../device/remembered.ts'
import { askToKeepStorage } from '../device/storage-persistence.ts'
import { watchWaking } from '../device/wake.ts'
import { createAnyLink } from '../sync/any-link.ts'
import { createEngine, type Engine } from '../sync/engine.ts'
import { freshLog } from '../sync/fresh-log.ts'
import type { HeldOp } from '../sync/held-op.ts'
import { createIdbStore } from '../sync/idb-store.ts'
import type { StoredLog } from '../sync/log-store.ts'
import { inventions, renaming } from './inventions.ts'
import { pageFetch } from './open-outing.ts'
import { ownPhonesIn } from './own-phones-in.ts'
import { closedPlan, planStore } from './plan-store.ts'
import { openTabs, type Tabs } from './tabs.ts'

/** A database of its own: nothing that lists, sends, hands over or exports outings can come upon it. */
const playerStore = createIdbStore('six-threes-player')

/** Of a player who has said nothing yet. */
const emptyPlan = planOf(emptyLog, isKnownPlayerValue)

let engine: Engine | null = null
let tabs: Tabs | null = null
let isLeading = false
let opening: Promise<void> | null = null
let beginning: Promise<Engine> | null = null

/** Shows what this phone holds of the player's log; a phone that holds none is asked nothing and keeps nothing. */
export function openPlan(): Promise<void> {
  tabs ??= openTabsOfPlan()
  opening ??= readPlan()
  return opening
}

function openTabsOfPlan(): Tabs {
  const made = openTabs('player', {
    wrote: () => void readAgain(),
    leads: leads => {
      isLeading = leads
      keepInTouch()
    },
  })
  watchWaking({
    wake: () => {
      made.lead()
      if (isShared()) engine?.wake()
    },
    sleep: () => engine?.disconnect(),
  })
  return made
}

/** A log that its owner has put on no other phone asks no server. */
const isShared = (): boolean => engine !== null && engine.holding().record.invite !== null

/** Of this phone's pages one talks to the server. */
export function keepInTouch(): void {
  if (isLeading && isShared()) engine?.connect()
  else engine?.disconnect()
}

/** Asks a storage that did not answer once more. */
export async function retryPlan(): Promise<void> {
  opening = null
  await openPlan()
}

/** Another page of this phone wrote into the log, or began it. */
async function readAgain(): Promise<void> {
  const stored = await storedLog().catch(() => undefined)
  if (engine && stored?.record.log === engine.holding().record.log) await engine.reload()
  else if (stored) hold(stored, true)
  // It was deleted there; what a failing disk has not taken is nowhere else and stays.
  else if (stored === null && engine?.foot().phone === 'saved') letGo()
  keepInTouch()
}

/** The page knows of no log any more; the next act begins a new one. */
function letGo(): void {
  engine?.disconnect()
  engine = null
  planStore.setState({ ...closedPlan, phase: 'open', plan: emptyPlan })
}

/**
 * Deletes the player's log from this phone for good, with the targets and cues beside it. What the player's other phones
 * hold stays there. False where the storage does not answer: then it is all still here.
 */
export async function removePlan(): Promise<boolean> {
  await openPlan()
  engine?.disconnect()
  await engine?.idle()
  try {
    for (const { record } of await playerStore.list()) await playerStore.remove(record.log)
  } catch {
    keepInTouch()
    return false
  }
  forgetAll('aims-')
  letGo()
  tabs?.tellWrote()
  return true
}

async function readPlan(): Promise<void> {
  const stored = await storedLog().catch(() => undefined)
  if (engine) return
  if (stored) hold(stored, true)
  else planStore.setState({ phase: stored === null ? 'open' : 'no storage', plan: emptyPlan })
}

/** The player's log on this phone, of two the newer; null where it has none. It rejects where the storage does not answer. */
async function storedLog(): Promise<StoredLog | null> {
  const records = (await playerStore.list()).map(({ record }) => record)
  const [newest] = records.sort((a, b) => b.at - a.at || (a.log < b.log ? -1 : 1))
  return newest === undefined ? null : playerStore.load(newest.log)
}

function hold(stored: StoredLog, isSaved: boolean): Engine {
  engine?.disconnect()
  const held = createEngine({
    store: playerStore,
    link: createAnyLink({ url: location.origin, clock: browserClock, fetch: pageFetch }),
    clock: browserClock,
    renaming: async () => renaming,
    stored,
    isSaved,
    alone: { take: async () => tabs?.alone.take() ?? true, give: () => tabs?.alone.give() },
    schemaOf: schemaInPlayerLog,
    changed: onDisk => {
      if (engine === held) publish(held)
      if (onDisk) tabs?.tellWrote()
    },
  })
  engine = held
  publish(held)
  keepInTouch()
  return held
}

function publish(held: Engine): void {
  const { state, record } = held.holding()
  planStore.setState({
    phase: 'open',
    plan: planOf(state, isKnownPlayerValue),
    isBegun: true,
    foot: held.foot(),
    isShared: record.invite !== null,
    phones: record.invite === null ? [] : ownPhonesIn(state, record),
  })
}

/** Begins the log with its first act. Of two pages that begin at once one waits for the other and goes on with its log. */
export async function engineOfPlan(): Promise<Engine> {
  await openPlan()
  if (engine) return engine
  beginning ??= alone(storedOrFresh).finally(() => {
    beginning = null
  })
  return beginning
}

async function storedOrFresh(): Promise<Engine> {
  if (engine) return engine
  const stored = await storedLog()
  if (stored) return hold(stored, true)
  const record = freshLog(inventions, createId(20) as LogId, '', Date.now())
  const isSaved = await playerStore.save(record, []).then(
    () => true,
    () => false,
  )
  void askToKeepStorage()
  return hold({ record, ops: [] }, isSaved)
}

/**
 * This phone goes on with a log from another phone of its owner; its own until now is taken off it once the other is
 * kept. Rejects where the storage does not answer, and nothing has changed then.
 */
export async function goOnWith(stored: StoredLog): Promise<Engine> {
  const before = (await playerStore.list()).map(({ record }) => record.log)
  await playerStore.save(stored.record, stored.ops)
  engine?.disconnect()
  await engine?.idle()
  for (const log of before) if (log !== stored.record.log) await playerStore.remove(log)
  void askToKeepStorage()
  const next = hold(stored, true)
  planStore.setState({ undoable: null })
  tabs?.tellWrote()
  return next
}

const alone = <T>(task: () => Promise<T>): Promise<T> => {
  const locks: LockManager | undefined = navigator.locks
  return locks ? locks.request('six-threes/player/begin', task) : task()
}

/** What an act says, made from the plan as it stands at the moment of writing. */
type Said = (plan: Plan) => readonly NewFact[]

/** Writes one act of the player, which can be taken back. */
export async function actOnPlan(name: string, factsOf: Said): Promise<void> {
  const held = await noteInPlan(name, factsOf)
  if (held) planStore.setState({ undoable: opIdOf(held.op) })
}

/** Writes what is so, whoever changed what in the bag last. */
export async function noteInPlan(name: string, factsOf: Said): Promise<HeldOp | null> {
  const engine = await engineOfPlan()
  return engine.write(({ state }) => ({
    scope: null,
    act: name,
    facts: factsReplacing(state, factsOf(planOf(state, isKnownPlayerValue))),
  }))
}

/** Takes back the last change on this page; what was changed since stays. */
export async function undoOnPlan(): Promise<void> {
  const { undoable } = planStore.getState()
  planStore.setState({ undoable: null })
  await engine?.write(({ state, ops }) => {
    const shown = [...ops.values()].map(({ op }) => op)
    const taken = shown.find(op => opIdOf(op) === undoable)
    return taken ? { scope: null, act: 'undone', facts: undoOf(state, shown, taken).facts } : null
  })
}
