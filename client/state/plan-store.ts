import { useStore } from 'zustand'
import { createStore } from 'zustand/vanilla'
import type { Plan } from '#core/plan/plan.ts'
import type { OpId } from '#core/values/ids.ts'
import type { Foot } from '../sync/foot.ts'

/** The player's own plan, as the screens read it. It is on this phone alone. */
export interface PlanStore {
  /** `no storage`: the phone's storage did not answer, and what is in it is not known. */
  readonly phase: 'closed' | 'open' | 'no storage'
  /** Null until it is read. */
  readonly plan: Plan | null
  /** Whether what is shown is on the disk of this phone. */
  readonly phone: Foot['phone']
  /** The last change on this page, while it can be taken back. */
  readonly undoable: OpId | null
}

export const closedPlan: PlanStore = {
  phase: 'closed',
  plan: null,
  phone: 'saved',
  undoable: null,
}

export const planStore = createStore<PlanStore>(() => closedPlan)

/** Reads from the plan. A selector returns a primitive or a reference that the store holds. */
export const usePlan = <T>(selector: (store: PlanStore) => T): T => useStore(planStore, selector)
