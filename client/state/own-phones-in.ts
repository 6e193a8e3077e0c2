import type { LogState } from '#core/log/fold.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import { isKnownValue } from '#shared/facts.ts'
import type { LogRecord } from '../sync/log-store.ts'
import type { OwnPhone } from './plan-store.ts'

/** The phones let into a player's log, in the order of their names; keys stand in it as in an outing's. */
export const ownPhonesIn = (state: LogState, record: LogRecord): readonly OwnPhone[] =>
  [...outingOf(state, isKnownValue).phones]
    .map(([device, { label, isVoid }]) => ({ device, label, isVoid, isThis: device === record.device }))
    .sort((a, b) => (a.label < b.label ? -1 : 1))
