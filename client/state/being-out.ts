import { type LogState, standingsOf } from '#core/log/fold.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId } from '#core/values/ids.ts'
import { protocolVersion } from '#shared/protocol.ts'
import { pulledAnswer } from '../sync/answers.ts'
import type { LogRecord } from '../sync/log-store.ts'
import { askByHttp } from '../sync/polling-link.ts'
import { pageFetch } from './open-outing.ts'

const askLimitMs = 2_500

/** The desk has taken this phone out, as far as is known here. */
export const isVoid = (state: LogState, device: DeviceId): boolean =>
  standingsOf(state, makeKey('voidKey', { device })).some(({ value }) => value === true)

/** The server says that the phone was taken out; false where none answers. */
export async function isVoidThere({ log, device, key, invite }: LogRecord): Promise<boolean> {
  const hello = { protocol: protocolVersion, log, device, key, invite }
  const nothing = { feed: 'all', after: Number.MAX_SAFE_INTEGER }
  try {
    const caller = { fetch: pageFetch, url: location.origin, hello }
    const answer = pulledAnswer.safeParse(await askByHttp(caller, 'pull', nothing, askLimitMs))
    return answer.success && answer.data.kind === 'stranger' && answer.data.why === 'voided'
  } catch {
    return false
  }
}
