import type { Outing } from '#core/outing/outing.ts'
import type { DeviceId } from '#core/values/ids.ts'
import { say } from '../words/say.ts'

/** Whose phone, by the name it gave. */
export const whoOf = (outing: Outing | null, device: DeviceId): string =>
  outing?.phones.get(device)?.label ?? say('nobody')
