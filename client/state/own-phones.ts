import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import type { Engine } from '../sync/engine.ts'
import { grantOf } from '../sync/feeds.ts'
import type { InviteSecret } from '../sync/log-store.ts'
import { followInvite, type JoinFault } from './invite-meeting.ts'
import { isStopped } from './inviting.ts'
import type { JoinLink } from './join-link.ts'
import { pageFetch } from './open-outing.ts'
import { formatOwnLink, parseOwnLink } from './own-link.ts'
import { ownPhonesIn } from './own-phones-in.ts'
import { pageAddress } from './page-address.ts'
import { planStore } from './plan-store.ts'
import { engineOfPlan, goOnWith, keepInTouch, openPlan } from './player-log.ts'
import { createInvite, freshRecord, inviteFact, keyFact } from './starting.ts'

const asOwner = { role: 'owner', group: null } as const

/** The code that puts the player's log on another phone; the first asking for it makes it, and from then on a server is met. */
export async function ownCode(): Promise<string> {
  const engine = await engineOfPlan()
  const holding = engine.holding()
  const { invite } = holding.record
  const standing = invite !== null && !isStopped(holding, invite.id) ? invite : await makeCode(engine, [])
  const page = await pageAddress(pageFetch, location)
  return formatOwnLink(page, { log: holding.record.log, invite: standing })
}

/** With the phone's own key where it has none yet, and what else is to be said in the same act. */
async function makeCode(engine: Engine, more: readonly NewFact[]): Promise<InviteSecret> {
  const invite = createInvite()
  const { state, record } = engine.holding()
  const isIn = grantOf(state, record.device) !== null
  const label = isIn ? record.label : phoneName(1)
  // The secret first: an invite without one is of no use to anybody.
  await engine.note({ invite, invites: [invite], label })
  const key = isIn ? [] : [keyFact({ ...record, label }, { ...asOwner, invite: null })]
  await act(engine, 'own code made', [...key, inviteFact(invite, { ...asOwner, label: 'Owner' }), ...more])
  keepInTouch()
  return invite
}

const act = (engine: Engine, name: string, facts: readonly NewFact[]): Promise<unknown> =>
  engine.write(({ state }) => ({ scope: null, act: name, facts: factsReplacing(state, facts) }))

const phoneName = (n: number): string => `Phone ${n}`

/** What a code leads to, seen from this phone. */
export interface CodeSight {
  /** This phone has that log already. */
  readonly isHere: boolean
  /** This phone holds a bag of its own that would be taken off it. */
  readonly hasOther: boolean
}

export async function lookAtCode(text: string): Promise<CodeSight | null> {
  const link = parseOwnLink(text)
  if (!link) return null
  await openPlan()
  const isHere = await isHeldHere(link)
  return { isHere, hasOther: !isHere && planStore.getState().isBegun }
}

const isHeldHere = async ({ log }: JoinLink): Promise<boolean> => {
  const isBegun = planStore.getState().isShared
  return isBegun && (await engineOfPlan()).holding().record.log === log
}

/** Takes the log that a code leads to onto this phone; in place of another that is here only where that is said. */
export async function takeOwnLog(
  text: string,
  removesOther: boolean,
): Promise<Result<null, JoinFault | 'another bag'>> {
  const link = parseOwnLink(text)
  if (!link) return err('not an invite')
  if (await isHeldHere(link)) return ok(null)
  // It may have been begun since the code was looked at.
  if (!removesOther && planStore.getState().isBegun) return err('another bag')
  const { log, invite } = link
  const followed = await followInvite({ ...freshRecord(log, ''), invite, invites: [invite] }, invite.id, [])
  if (!followed.ok) return followed
  const { holding } = followed.value
  if (followed.value.grant.role !== 'owner') return err('not an invite')
  const record = { ...holding.record, label: phoneName(ownPhonesIn(holding.state, holding.record).length + 1) }
  const engine = await goOnWith({ record, ops: [...holding.ops.values()] })
  await act(engine, 'phone joined', [keyFact(record, { ...asOwner, invite: invite.id })])
  return ok(null)
}

/** Takes another of the player's phones out. It knows the code, which is stopped with it; a new one is made. */
export async function takeOwnPhoneOut(device: DeviceId): Promise<void> {
  const engine = await engineOfPlan()
  const { invite } = engine.holding().record
  const stopped = invite ? [{ key: makeKey('voidInvite', { invite: invite.id }), value: true }] : []
  await makeCode(engine, [{ key: makeKey('voidKey', { device }), value: true }, ...stopped])
}
