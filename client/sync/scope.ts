import { groupOfKey } from '#core/log/op.ts'
import type { GroupId } from '#core/values/ids.ts'

/** The one group whose keys an act writes, or null for an act of the desk. */
export function scopeOfKeys(facts: readonly { readonly key: string }[]): GroupId | null {
  const groups = new Set(facts.map(({ key }) => groupOfKey(key)))
  const [group = null] = groups
  return groups.size === 1 ? group : null
}
