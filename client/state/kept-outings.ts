import type { Outing } from '#core/outing/outing.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { LogId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import { grantOf } from '../sync/feeds.ts'
import { holdingOf } from '../sync/holding.ts'
import { logStore } from './open-outing.ts'

/** An outing on this phone, read without opening it. */
export interface KeptOuting {
  readonly log: LogId
  /** The name that this phone gave there. */
  readonly label: string
  readonly outing: Outing
  /** False for a card taken home or a file that is there to be read. */
  readonly isIn: boolean
}

/** Null where it is not on this phone or its storage does not answer. */
export async function readOuting(log: LogId): Promise<KeptOuting | null> {
  const stored = await logStore.load(log).catch(() => null)
  if (stored === null) return null
  const { state } = holdingOf(stored)
  const { device, label } = stored.record
  return { log, label, outing: outingOf(state, isKnownValue), isIn: grantOf(state, device) !== null }
}
