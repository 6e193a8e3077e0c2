import { createStore } from 'zustand/vanilla'
import { emptyLog, type LogState } from '#core/log/fold.ts'
import type { Role } from '#core/outing/facts.ts'
import type { Levels } from '#core/outing/levels.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { DeviceId, GroupId, LogId } from '#core/values/ids.ts'
import { emptyFoot, type Foot } from '../sync/foot.ts'
import type { HeldOp } from '../sync/held-op.ts'

export type { Foot } from '../sync/foot.ts'
export type { HeldOp } from '../sync/held-op.ts'

/** Who this phone is in the outing; a phone that opened a file and was let in by nobody has no role. */
export interface Me {
  readonly device: DeviceId
  readonly role: Role | null
  readonly group: GroupId | null
  readonly label: string
}

/** True on a phone that puts scores in: not on one that watches, nor on one that nobody let in. */
export const mayScore = (me: Me | null): boolean => me?.role === 'desk' || me?.role === 'scorer'

/** The one open outing, as the screens read it. */
export interface OutingStore {
  readonly log: LogId | null
  readonly phase: 'closed' | 'loading' | 'open' | 'not here'
  readonly state: LogState
  readonly outing: Outing | null
  readonly levels: Levels | null
  /** Every op in the fold, in the order in which this phone came to hold them. */
  readonly history: readonly HeldOp[]
  readonly me: Me | null
  readonly foot: Foot
}

/** True once the server has said that the outing was deleted there. */
export const isDeletedOnServer = ({ foot }: Pick<OutingStore, 'foot'>): boolean => foot.stranger === 'deleted'

export const closedOuting: OutingStore = {
  log: null,
  phase: 'closed',
  state: emptyLog,
  outing: null,
  levels: null,
  history: [],
  me: null,
  foot: emptyFoot,
}

export const outingStore = createStore<OutingStore>(() => closedOuting)
