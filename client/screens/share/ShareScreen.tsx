import { useState } from 'react'
import type { Outing } from '#core/outing/outing.ts'
import type { GroupId } from '#core/values/ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { LookButton } from '../../parts/LookButton.tsx'
import { isCardLog } from '../../state/card-taken.ts'
import { isDeletedOnServer } from '../../state/outing-store.ts'
import { groupsPlaying } from '../../state/own-group.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { PageNotice } from '../home/PageNotice.tsx'
import { OutingPage } from '../outing/OutingPage.tsx'
import { DeleteOuting } from './DeleteOuting.tsx'
import { HandOver } from './HandOver.tsx'
import { InviteLink } from './InviteLink.tsx'
import { Invites } from './Invites.tsx'
import { inviteText } from './invite-text.ts'
import { Phones } from './Phones.tsx'
import { RemoveOuting } from './RemoveOuting.tsx'
import { TakenOut, useIsOut } from './TakenOut.tsx'
import { ThisPhoneIs } from './ThisPhoneIs.tsx'
import { ThreeWords } from './ThreeWords.tsx'

interface Offer {
  readonly id: string
  readonly role: 'desk' | 'scorer' | 'viewer'
  readonly group: GroupId | null
  readonly text: string
  /** Where three words let in, if they can be said for this: a group, or null for the desk where all are. */
  readonly words?: GroupId | null
}

/** Invites by link and QR, the phones that are in, and this phone's own settings. */
export function ShareScreen() {
  const outing = useOuting(store => store.outing)
  const log = useOuting(store => store.log)
  const role = useOuting(store => store.me?.role ?? null)
  const own = useOuting(store => store.me?.group ?? null)
  // Once an invite is stopped another one is shown.
  const stopped = useOuting(store => [...(store.outing?.invites.values() ?? [])].filter(each => each.isVoid).length)
  const isOut = useIsOut()
  const [chosen, setChosen] = useState('')
  const isDeleted = useOuting(isDeletedOnServer)
  if (!outing || !log) return null
  const offers = isDeleted ? [] : offersOf(outing, role, own)
  const offer = offers.find(({ id }) => id === chosen) ?? offers[0]
  return (
    <OutingPage tab="share">
      <h1>{say('share-title')}</h1>
      {isOut && <TakenOut />}
      {offer && !isOut ? (
        <>
          <Choice
            label={say('share-who')}
            value={offer.id}
            options={offers.map(({ id, text }) => ({ value: id, text }))}
            onValue={setChosen}
          />
          {offer.words !== undefined && <ThreeWords key={`words ${offer.id}`} group={offer.words} />}
          <InviteLink key={`${offer.id} ${stopped}`} role={offer.role} group={offer.group} />
        </>
      ) : (
        !isOut && <p>{say(isCardLog(log) ? 'card-home-read' : isDeleted ? 'stranger-deleted' : 'share-viewing')}</p>
      )}
      {!isCardLog(log) && <HandOver />}
      <Invites />
      <Phones />
      <section className="section" aria-label={say('share-this-phone')}>
        <h2>{say('share-this-phone')}</h2>
        <ThisPhoneIs />
        <PageNotice />
        <LookButton />
        <RemoveOuting log={log} outing={outing} />
      </section>
      <DeleteOuting outing={outing} />
    </OutingPage>
  )
}

/** A phone gives no more than it has; in an outing of one group everybody who scores is equal. */
function offersOf(outing: Outing, role: string | null, own: GroupId | null): readonly Offer[] {
  const offer = (role: Offer['role'], group: GroupId | null): Offer => ({
    id: group === null ? role : `${role} ${group}`,
    role,
    group,
    text: inviteText(outing, { role, group }),
  })
  const scorer = (group: GroupId): Offer => ({ ...offer('scorer', group), words: group })
  const viewer = offer('viewer', null)
  if (role === 'desk') {
    const desk = offer('desk', null)
    if (outing.groups.size < 2) return [{ ...desk, words: null }, viewer]
    return [...groupsPlaying(outing).map(({ id }) => scorer(id)), desk, viewer]
  }
  return role === 'scorer' && own ? [scorer(own), viewer] : []
}
