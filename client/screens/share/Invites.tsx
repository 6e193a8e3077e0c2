import { standingsOf } from '#core/log/fold.ts'
import { partsOfOpId } from '#core/log/op.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { Invite, Outing, Phone } from '#core/outing/outing.ts'
import type { InviteId } from '#core/values/ids.ts'
import { fire } from '../../parts/fire.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { whoOf } from '../../parts/who-of.ts'
import type { OutingStore } from '../../state/outing-store.ts'
import { restartInvite, stopInvite } from '../../state/phones.ts'
import { useOuting } from '../../state/use-outing.ts'
import { formatDots, formatList, formatTime } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { inviteText } from './invite-text.ts'
import { useIsOut } from './TakenOut.tsx'

interface Line {
  readonly id: InviteId
  readonly invite: Invite
  readonly what: string
  readonly made: string
  readonly at: number
  readonly phones: readonly Phone[]
}

/** The invites that phones have made, for the desk to stop one; those that are stopped lie behind a line. */
export function Invites() {
  const outing = useOuting(store => store.outing)
  const state = useOuting(store => store.state)
  const isDesk = useOuting(store => store.me?.role === 'desk')
  const isOut = useIsOut()
  if (!outing || !isDesk || isOut || outing.invites.size === 0) return null
  const lines = [...outing.invites].map(([id, invite]) => lineOf(outing, state, id, invite))
  const [standing, stopped] = [false, true].map(isVoid => lines.filter(({ invite }) => invite.isVoid === isVoid))
  return (
    <section className="section" aria-label={say('invites-title')}>
      <h2>{say('invites-title')}</h2>
      <p className="quiet">{say('invites-hint')}</p>
      <InviteList lines={standing ?? []} />
      {stopped && stopped.length > 0 && (
        <details className="filled">
          <summary>{say('invites-stopped', { n: stopped.length })}</summary>
          <InviteList lines={stopped} />
        </details>
      )}
    </section>
  )
}

/** The last made first. */
function InviteList({ lines }: { readonly lines: readonly Line[] }) {
  return (
    <ul className="lines">
      {lines
        .toSorted((a, b) => b.at - a.at || (a.id < b.id ? -1 : 1))
        .map(line => (
          <li key={line.id}>
            <InviteLine {...line} />
          </li>
        ))}
    </ul>
  )
}

function InviteLine({ id, invite, what, made, phones }: Line) {
  const names = phones.filter(phone => !phone.isVoid).map(({ label }) => label)
  const came = phones.map(({ label, isVoid }) => (isVoid ? say('invite-came-out', { name: label }) : label))
  const warning = [
    say('invite-stop-warning'),
    names.length > 0 && say('invite-stop-stay', { names: formatList(names) }),
  ]
  return (
    <fieldset className="stack">
      <legend className="hidden">{formatDots([what, made])}</legend>
      <b>{formatDots([what, invite.isVoid && say('invite-stopped')])}</b>
      <span className="quiet">{made}</span>
      <span className="quiet">
        {came.length === 0
          ? say('invite-came-nobody')
          : say('invite-came', { n: came.length, names: formatList(came) })}
      </span>
      {invite.isVoid ? (
        <button type="button" className="button" onClick={() => fire(restartInvite(id))}>
          {say('invite-again')}
        </button>
      ) : (
        <SecondTap
          label={say('invite-stop')}
          sure={say('invite-stop-sure')}
          warning={warning.filter(Boolean).join(' ')}
          onSure={() => fire(stopInvite(id))}
        />
      )}
    </fieldset>
  )
}

function lineOf(outing: Outing, state: OutingStore['state'], id: InviteId, invite: Invite): Line {
  const made = standingsOf(state, makeKey('invite', { invite: id })).at(-1)
  const at = made?.at ?? 0
  const device = made ? partsOfOpId(made.op).device : null
  return {
    id,
    invite,
    what: inviteText(outing, invite),
    made: say('invite-made', { who: device ? whoOf(outing, device) : say('nobody'), when: formatTime(at) }),
    at,
    phones: [...outing.phones.values()].filter(phone => phone.invite === id),
  }
}
