import type { GroupId } from '#core/values/ids.ts'
import type { Admit, Admitted } from '#shared/messages/admit.ts'
import type { AskersAnswer } from '#shared/messages/askers.ts'
import type { Allotted, AllotWords } from '#shared/messages/words.ts'
import type { Actor } from '#shared/roles.ts'
import type { Door, Invitation, Place } from '../access/door.ts'
import { hashOf, type Shown } from '../access/shown.ts'
import type { Weight } from '../access/weigh.ts'
import type { Store } from '../store/store.ts'

export interface WelcomeOptions {
  readonly door: Door
  readonly store: Pick<Store, 'accessOf'>
  readonly weigh: (shown: Shown) => Promise<Weight>
  /** Who asks there has changed: the phones that may let them in hear of it. */
  readonly changed: (place: Place) => void
}

/** What the phones that are in say about those who ask. */
export interface Welcome {
  words(shown: Shown, message: AllotWords): Promise<Allotted>
  askers(shown: Shown): Promise<AskersAnswer>
  admit(shown: Shown, message: Admit): Promise<Admitted>
}

/** A desk lets in anywhere, a scorer into its own group. */
export const mayLetIn = ({ role, group }: Actor, into: GroupId | null): boolean =>
  role === 'desk' || (role === 'scorer' && into !== null && into === group)

export function createWelcome({ door, store, weigh, changed }: WelcomeOptions): Welcome {
  /** Whether the invite is stored, stands, and gives what the words said: the server only passes it on. */
  const faultOf = async (shown: Shown, { group }: Place, { id, secret }: Invitation) => {
    const { invite, inviteVoid } = await store.accessOf(shown.log, shown.device, id)
    if (invite?.hash !== hashOf(secret)) return 'invite unknown'
    const isAsSaid = invite.role === (group === null ? 'desk' : 'scorer') && invite.group === group
    return isAsSaid && !inviteVoid ? null : 'not yours'
  }

  return {
    async words(shown, { group }) {
      const weight = await weigh(shown)
      if (weight.kind === 'stranger') return weight
      if (weight.kind === 'guest' || !mayLetIn(weight.actor, group)) return { kind: 'no words', why: 'not yours' }
      const spoken = door.allot({ log: shown.log, group })
      return spoken ? { kind: 'words', spoken } : { kind: 'no words', why: 'busy' }
    },
    async askers(shown) {
      const weight = await weigh(shown)
      if (weight.kind === 'stranger') return weight
      const isMine = ({ group }: { readonly group: GroupId | null }) =>
        weight.kind === 'member' && mayLetIn(weight.actor, group)
      return {
        kind: 'askers',
        spoken: door.spoken(shown.log).filter(isMine),
        askers: door.askers(shown.log).filter(isMine),
      }
    },
    async admit(shown, { asker, invite }) {
      const weight = await weigh(shown)
      if (weight.kind === 'stranger') return weight
      const place = door.placeOf(shown.log, asker)
      if (!place) return { kind: 'not admitted', why: 'gone' }
      if (weight.kind === 'guest' || !mayLetIn(weight.actor, place.group)) {
        return { kind: 'not admitted', why: 'not yours' }
      }
      const fault = invite && (await faultOf(shown, place, invite))
      if (fault) return { kind: 'not admitted', why: fault }
      const isAnswered = door.answer(shown.log, asker, invite)
      changed(place)
      return isAnswered ? { kind: 'admitted' } : { kind: 'not admitted', why: 'gone' }
    },
  }
}
