import type { LogId } from '#core/values/ids.ts'
import { browserClock } from '../device/browser-clock.ts'
import { remember } from '../device/remembered.ts'
import { deletedAnswer } from '../sync/answers.ts'
import { closeLog, currentEngine, engineOf, logStore } from './open-outing.ts'
import { isDeletedOnServer, outingStore } from './outing-store.ts'

const toldLimitMs = 5_000

export const deleteFaults = ['no server', 'not yours', 'older server', 'failed'] as const
export type DeleteFault = (typeof deleteFaults)[number]

/** Deletes the open outing from the server for good. What this phone holds stays on it. */
export async function deleteOuting(): Promise<DeleteFault | null> {
  const isInTouch = outingStore.getState().foot.link === 'live'
  const answer = deletedAnswer.safeParse(await currentEngine().ask('delete', {}))
  // The server ends the link of a deleted outing, perhaps before its answer is read; on the next it says so.
  if (!answer.success) return isInTouch && (await isToldDeleted()) ? null : 'no server'
  switch (answer.data.kind) {
    case 'deleted':
      return null
    case 'not deleted':
      return 'not yours'
    case 'stranger':
      return answer.data.why === 'deleted' ? null : 'no server'
    case 'fault':
      return answer.data.code === 'wrong shape' ? 'older server' : 'failed'
  }
}

const isToldDeleted = (): Promise<boolean> =>
  new Promise(resolve => {
    const decide = (isTold: boolean): void => {
      callOff()
      unwatch()
      resolve(isTold)
    }
    const callOff = browserClock.after(toldLimitMs, () => decide(false))
    const unwatch = outingStore.subscribe(store => isDeletedOnServer(store) && decide(true))
  })

/** Takes an outing off this phone, with what this phone remembered about it. False when its storage does not answer. */
export async function removeFromPhone(log: LogId): Promise<boolean> {
  const engine = engineOf(log)
  // What is still coming in would be written behind it.
  engine?.disconnect()
  await engine?.idle()
  try {
    await logStore.remove(log)
  } catch {
    engine?.connect()
    return false
  }
  closeLog()
  for (const name of [`whose-${log}`, `aims-${log}`, `group-${log}`] as const) remember(name, null)
  return true
}
