import { withdrawn } from '#core/log/op.ts'
import { factsReplacing } from '#core/outing/acts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId, InviteId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { grantOf } from '../sync/feeds.ts'
import { act } from './actions.ts'
import { currentEngine } from './open-outing.ts'

/** The desk takes a phone's rights: what it writes from then on stays on it. */
export const takePhoneOut = (device: DeviceId): Promise<void> => setVoid(device, true)

/** Gives a phone its rights back. */
export const takePhoneBack = (device: DeviceId): Promise<void> => setVoid(device, withdrawn)

const setVoid = (device: DeviceId, value: Json): Promise<void> =>
  act(value === withdrawn ? 'phone taken back' : 'phone taken out', [{ key: makeKey('voidKey', { device }), value }])

/** The desk stops an invite: no phone comes in by it from then on, and those that came by it stay in. */
export const stopInvite = (invite: InviteId): Promise<void> =>
  act('invite stopped', [{ key: makeKey('voidInvite', { invite }), value: true }])

/** Phones come in by it again. */
export const restartInvite = (invite: InviteId): Promise<void> =>
  act('invite good again', [{ key: makeKey('voidInvite', { invite }), value: withdrawn }])

/** Another player has this phone from here on; what was written on it before stays under the name that it had. */
export async function renamePhone(label: string): Promise<void> {
  const engine = currentEngine()
  await engine.note({ label })
  await engine.write(({ state, record }) => {
    const grant = grantOf(state, record.device)
    if (grant === null || grant.label === label) return null
    const fact = { key: makeKey('key', { device: record.device }), value: { ...grant, label } as unknown as Json }
    return { scope: null, act: 'phone handed on', facts: factsReplacing(state, [fact]) }
  })
}
