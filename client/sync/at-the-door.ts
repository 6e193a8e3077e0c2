import type { Role } from '#core/outing/facts.ts'
import type { DeviceId, GroupId } from '#core/values/ids.ts'
import { askersAnswer, offersAnswer } from './answers.ts'
import type { Clock } from './clock.ts'
import type { Contact } from './contact.ts'

/** Somebody who asks to be let in by three words. */
export interface AtTheDoor {
  readonly asker: string
  readonly name: string
  /** Null for the desk, where all are desks. */
  readonly group: GroupId | null
}

/** Three words that open a request, until a time by this phone's clock, milliseconds since 1970. */
export interface SpokenWords {
  readonly group: GroupId | null
  readonly words: readonly string[]
  readonly until: number
}

export interface DoorParts {
  readonly contact: Contact
  readonly clock: Clock
  /** What this phone may do in the log; null while its key is not in it. */
  readonly role: () => Role | null
  /** False where the link tells nothing, so that the desk has to ask what waits for it. */
  readonly isTold: () => boolean
  readonly offered: (ops: readonly { readonly text: string; readonly carrier: DeviceId }[]) => void
  readonly changed: () => void
}

/** Who waits for a tap of this phone. The server keeps it in memory alone, so it is asked anew on every connection. */
export interface Door {
  readonly look: () => void
  /** Out of touch nobody can be let in. */
  readonly lost: () => void
  readonly askers: () => readonly AtTheDoor[]
  readonly spoken: () => readonly SpokenWords[]
}

export function createDoor({ contact, clock, role, isTold, offered, changed }: DoorParts): Door {
  let askers: readonly AtTheDoor[] = []
  let spoken: readonly SpokenWords[] = []

  const lookForAskers = async (): Promise<void> => {
    const answer = askersAnswer.safeParse(await contact.ask('askers', {}))
    if (!answer.success || answer.data.kind !== 'askers') return
    askers = answer.data.askers
    spoken = answer.data.spoken.map(({ leftMs, ...said }) => ({ ...said, until: clock.now() + leftMs }))
    changed()
  }

  const lookForOffers = async (): Promise<void> => {
    const answer = offersAnswer.safeParse(await contact.ask('offers', {}))
    if (answer.success && answer.data.kind === 'offers') offered(answer.data.ops)
  }

  return {
    look: () => {
      const mine = role()
      if (!contact.isUp() || (mine !== 'desk' && mine !== 'scorer')) return
      void lookForAskers()
      if (mine === 'desk' && !isTold()) void lookForOffers()
    },
    lost: () => {
      askers = []
    },
    askers: () => askers,
    spoken: () => spoken,
  }
}
