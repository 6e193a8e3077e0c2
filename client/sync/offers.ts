import { type Op, opIdOf } from '#core/log/op.ts'
import type { DeviceId } from '#core/values/ids.ts'
import { parseOpShape } from '#shared/op.ts'

/** An op that somebody carries beyond their own rights: the desk takes it in by sending it. */
export interface Offer {
  readonly text: string
  readonly op: Op
  readonly carrier: DeviceId
}

/** The offers with these in, each op once. */
export function offersOf(
  offers: readonly Offer[],
  added: readonly { readonly text: string; readonly carrier: DeviceId }[],
): readonly Offer[] {
  const byId = new Map(offers.map(offer => [opIdOf(offer.op), offer]))
  for (const { text, carrier } of added) {
    const parsed = parseOpShape(text)
    if (parsed.ok) byId.set(opIdOf(parsed.value), { text, op: parsed.value, carrier })
  }
  return [...byId.values()]
}
