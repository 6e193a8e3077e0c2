import { useStore } from 'zustand'
import { createStore } from 'zustand/vanilla'
import { emptyLog } from '#core/log/fold.ts'
import type { Plan } from '#core/plan/plan.ts'
import { planOf } from '#core/plan/plan-of.ts'
import type { OpId } from '#core/values/ids.ts'
import { isKnownPlayerValue } from '#shared/player-facts.ts'
import type { Foot } from '../sync/foot.ts'

/** The player's own plan, as the screens read it. It is on this phone alone. */
export interface PlanStore {
  /** `no storage`: the phone's storage did not answer, and what is in it is not known. */
  readonly phase: 'closed' | 'open' | 'no storage'
  readonly plan: Plan
  /** Whether what is shown is on the disk of this phone. */
  readonly phone: Foot['phone']
  /** The last change on this page, while it can be taken back. */
  readonly undoable: OpId | null
}

export const closedPlan: PlanStore = {
  phase: 'closed',
  plan: planOf(emptyLog, isKnownPlayerValue),
  phone: 'saved',
  undoable: null,
}

export const planStore = createStore<PlanStore>(() => closedPlan)

/** Reads from the plan. A selector returns a primitive or a reference that the store holds. */
export const usePlan = <T>(selector: (store: PlanStore) => T): T => useStore(planStore, selector)
