import { standingsOf } from '#core/log/fold.ts'
import { factsReplacing } from '#core/outing/acts.ts'
import type { Role } from '#core/outing/facts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { GroupId, InviteId } from '#core/values/ids.ts'
import { factSchemas } from '#shared/facts.ts'
import type { Engine } from '../sync/engine.ts'
import { grantOf, groupsOf } from '../sync/feeds.ts'
import type { Holding } from '../sync/holding.ts'
import type { InviteSecret } from '../sync/log-store.ts'
import { grantOfInvite } from './invite-meeting.ts'
import { formatJoinLink } from './join-link.ts'
import { currentEngine, pageFetch } from './open-outing.ts'
import { pageAddress } from './page-address.ts'
import { createInvite, inviteFact } from './starting.ts'

/** A link that lets a phone in; the one made before where there is one. In an outing of one group a scorer is a desk. */
export async function inviteLink(role: 'desk' | 'scorer' | 'viewer', group: GroupId | null): Promise<string> {
  const engine = currentEngine()
  const page = await pageAddress(pageFetch, location)
  return formatJoinLink(page, { log: engine.holding().record.log, invite: await inviteFor(engine, role, group) })
}

/** An invite that stands, the one made before where there is one. */
export async function inviteFor(
  engine: Engine,
  role: 'desk' | 'scorer' | 'viewer',
  group: GroupId | null,
): Promise<InviteSecret> {
  const holding = engine.holding()
  const wanted = grantWanted(holding, role, group)
  const known = knownInvites(holding).find(invite => isGrant(holding, invite, wanted))
  if (known) return known
  const invite = createInvite()
  // The secret first: an invite without one is of no use to anybody.
  await engine.note({ invites: [...holding.record.invites, invite] })
  const fact = inviteFact(invite, { ...wanted, label: labelOf(holding, wanted) })
  await engine.write(({ state }) => ({ scope: null, act: 'invite made', facts: factsReplacing(state, [fact]) }))
  return invite
}

interface Wanted {
  readonly role: Role
  readonly group: GroupId | null
}

/** A scorer gives what it has, whatever has become of the other groups. */
function grantWanted({ state, record }: Holding, role: 'desk' | 'scorer' | 'viewer', group: GroupId | null): Wanted {
  const isScorer = grantOf(state, record.device)?.role === 'scorer'
  if (role === 'scorer' && (isScorer || groupsOf(state).length > 1)) return { role, group }
  return { role: role === 'scorer' ? 'desk' : role, group: null }
}

const knownInvites = ({ record }: Holding): readonly InviteSecret[] =>
  record.invite ? [record.invite, ...record.invites] : record.invites

function isGrant(holding: Holding, { id }: InviteSecret, { role, group }: Wanted): boolean {
  const grant = grantOfInvite(holding, id)
  return !isStopped(holding, id) && grant?.role === role && grant.group === group
}

export const isStopped = ({ state }: Holding, invite: InviteId): boolean =>
  standingsOf(state, makeKey('voidInvite', { invite })).length > 0

/** The invite that a hand-over carries: the one that this phone came by, or, once that is stopped, another for the same. */
export function inviteToHandOn(holding: Holding): InviteSecret | null {
  const came = holding.record.invite
  const grant = came && isStopped(holding, came.id) ? grantOfInvite(holding, came.id) : null
  return (grant && knownInvites(holding).find(invite => isGrant(holding, invite, grant))) ?? came
}

function labelOf({ state }: Holding, { role, group }: Wanted): string {
  if (role === 'viewer') return 'Viewers'
  if (group === null) return 'Desk'
  const parsed = factSchemas.group.safeParse(standingsOf(state, makeKey('group', { group })).at(-1)?.value)
  return parsed.success ? parsed.data.name : 'Group'
}
