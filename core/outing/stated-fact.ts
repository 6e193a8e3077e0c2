import { withdrawn } from '#core/log/op.ts'
import type { Json } from '#core/values/json.ts'
import type { FactKind, FactValues } from './facts.ts'
import { makeKey } from './keys.ts'

/** A fact as an act states it, before it knows what it replaces. */
export interface NewFact {
  readonly key: string
  readonly value: Json
}

/** A fact of a kind with these ids in its key. */
export const statedFact = <K extends FactKind>(
  kind: K,
  slots: Parameters<typeof makeKey>[1],
  value: FactValues[K],
): NewFact => ({
  key: makeKey(kind, slots),
  value: value as unknown as Json,
})

/** The same; null takes it away. */
export const factOrNone = <K extends FactKind>(
  kind: K,
  slots: Parameters<typeof makeKey>[1],
  value: FactValues[K] | null,
): NewFact => (value === null ? { key: makeKey(kind, slots), value: withdrawn } : statedFact(kind, slots, value))
