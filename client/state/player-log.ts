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
import { askToKeepStorage } from '../device/storage-persistence.ts'
import { freshLog } from '../sync/fresh-log.ts'
import { createIdbStore } from '../sync/idb-store.ts'
import { createKeeper, type Keeper } from '../sync/keeper.ts'
import type { StoredLog } from '../sync/log-store.ts'
import { inventions } from './inventions.ts'
import { planStore } from './plan-store.ts'
import { openTabs, type Tabs } from './tabs.ts'

/** A database of its own: nothing that lists, sends, hands over or exports outings can come upon it. */
const playerStore = createIdbStore('six-threes-player')

/** Of a player who has said nothing yet. */
const emptyPlan = planOf(emptyLog, isKnownPlayerValue)

let keeper: Keeper | null = null
let tabs: Tabs | null = null
let opening: Promise<void> | null = null
let beginning: Promise<Keeper> | null = null

/** Shows what this phone holds of the player's log; a phone that holds none is asked nothing and keeps nothing. */
export function openPlan(): Promise<void> {
  tabs ??= openTabs('player', { wrote: () => void readAgain(), leads: () => undefined })
  opening ??= readPlan()
  return opening
}

/** Asks a storage that did not answer once more. */
export async function retryPlan(): Promise<void> {
  opening = null
  await openPlan()
}

/** Another page of this phone wrote into the log, or began it. */
async function readAgain(): Promise<void> {
  if (keeper) await keeper.reload()
  else await readPlan()
}

async function readPlan(): Promise<void> {
  const stored = await storedLog().catch(() => undefined)
  if (keeper) return
  if (stored) hold(stored, true)
  else planStore.setState({ phase: stored === null ? 'open' : 'no storage', plan: emptyPlan })
}

/** The player's log on this phone; null where it has none. It rejects where the storage does not answer. */
async function storedLog(): Promise<StoredLog | null> {
  const [first] = (await playerStore.list()).map(({ record }) => record.log).sort()
  return first === undefined ? null : playerStore.load(first)
}

function hold(stored: StoredLog, isSaved: boolean): Keeper {
  const held = createKeeper({
    store: playerStore,
    clock: browserClock,
    stored,
    isSaved,
    alone: { take: async () => tabs?.alone.take() ?? true, give: () => tabs?.alone.give() },
    schemaOf: schemaInPlayerLog,
    changed: onDisk => {
      publish(held)
      if (onDisk) tabs?.tellWrote()
    },
  })
  keeper = held
  publish(held)
  return held
}

function publish(held: Keeper): void {
  const { state } = held.holding()
  planStore.setState({ phase: 'open', plan: planOf(state, isKnownPlayerValue), phone: held.phone() })
}

/** Begins the log with its first act. Of two pages that begin at once one waits for the other and goes on with its log. */
async function keeperToWrite(): Promise<Keeper> {
  await openPlan()
  if (keeper) return keeper
  beginning ??= alone(storedOrFresh).finally(() => {
    beginning = null
  })
  return beginning
}

async function storedOrFresh(): Promise<Keeper> {
  if (keeper) return keeper
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

const alone = <T>(task: () => Promise<T>): Promise<T> => {
  const locks: LockManager | undefined = navigator.locks
  return locks ? locks.request('six-threes/player/begin', task) : task()
}

/** Writes one act of the player, made from the plan as it stands at the moment of writing. */
export async function actOnPlan(name: string, factsOf: (plan: Plan) => readonly NewFact[]): Promise<void> {
  const held = await (await keeperToWrite()).write(({ state }) => ({
    scope: null,
    act: name,
    facts: factsReplacing(state, factsOf(planOf(state, isKnownPlayerValue))),
  }))
  if (held) planStore.setState({ undoable: opIdOf(held.op) })
}

/** Takes back the last change on this page; what was changed since stays. */
export async function undoOnPlan(): Promise<void> {
  const { undoable } = planStore.getState()
  planStore.setState({ undoable: null })
  await keeper?.write(({ state, ops }) => {
    const shown = [...ops.values()].map(({ op }) => op)
    const taken = shown.find(op => opIdOf(op) === undoable)
    return taken ? { scope: null, act: 'undone', facts: undoOf(state, shown, taken).facts } : null
  })
}
