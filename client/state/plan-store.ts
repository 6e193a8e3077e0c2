import { useStore } from 'zustand'
import { createStore } from 'zustand/vanilla'
import type { Plan } from '#core/plan/plan.ts'
import type { DeviceId, OpId } from '#core/values/ids.ts'
import { emptyFoot, type Foot } from '../sync/foot.ts'

/** A phone of the player's that holds the log. */
export interface OwnPhone {
  readonly device: DeviceId
  readonly label: string
  readonly isThis: boolean
  readonly isVoid: boolean
}

/** The player's own plan, as the screens read it. It is on this phone alone until its owner puts it on another. */
export interface PlanStore {
  /** `no storage`: the phone's storage did not answer, and what is in it is not known. */
  readonly phase: 'closed' | 'open' | 'no storage'
  /** Null until it is read. */
  readonly plan: Plan | null
  /** This phone holds a log of the player's: something was said in it, or a code made. */
  readonly isBegun: boolean
  readonly foot: Pick<Foot, 'phone' | 'waiting' | 'link' | 'stranger'>
  /** There is a code that puts it on other phones, and a server between them. */
  readonly isShared: boolean
  readonly phones: readonly OwnPhone[]
  /** The last change on this page, while it can be taken back. */
  readonly undoable: OpId | null
}

export const closedPlan: PlanStore = {
  phase: 'closed',
  plan: null,
  isBegun: false,
  foot: emptyFoot,
  isShared: false,
  phones: [],
  undoable: null,
}

export const planStore = createStore<PlanStore>(() => closedPlan)

/** Reads from the plan. A selector returns a primitive or a reference that the store holds. */
export const usePlan = <T>(selector: (store: PlanStore) => T): T => useStore(planStore, selector)
