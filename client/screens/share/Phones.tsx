import type { Phone } from '#core/outing/outing.ts'
import type { DeviceId } from '#core/values/ids.ts'
import { fire } from '../../parts/fire.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { takePhoneBack, takePhoneOut } from '../../state/phones.ts'
import { useOuting } from '../../state/use-outing.ts'
import { formatDots } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { useIsOut } from './TakenOut.tsx'

/** The phones that are in, by the names they gave; the desk takes one out or lets it in again. */
export function Phones() {
  const phones = useOuting(store => store.outing?.phones ?? null)
  const own = useOuting(store => store.me?.device ?? null)
  const isDesk = useOuting(store => store.me?.role === 'desk')
  const isOut = useIsOut()
  if (!phones || phones.size === 0) return null
  const rank = (device: DeviceId, { isVoid }: Phone): number => (device === own ? 0 : isVoid ? 2 : 1)
  const sorted = [...phones].toSorted(([a, one], [b, other]) => rank(a, one) - rank(b, other))
  return (
    <section className="section" aria-label={say('share-phones')}>
      <h2>{say('share-phones')}</h2>
      <p className="quiet">{say('phones-hint')}</p>
      <ul className="lines">
        {sorted.map(([device, phone]) => (
          <li key={device} className="stack">
            <PhoneLine phone={phone} isOwn={device === own} />
            {isDesk && !isOut && device !== own && <PhoneRights device={device} phone={phone} />}
          </li>
        ))}
      </ul>
    </section>
  )
}

function PhoneLine({ phone, isOwn }: { readonly phone: Phone; readonly isOwn: boolean }) {
  const group = useOuting(({ outing }) =>
    phone.group && outing && outing.groups.size > 1 ? (outing.groups.get(phone.group)?.name ?? null) : null,
  )
  const isOneGroup = useOuting(({ outing }) => (outing?.groups.size ?? 0) < 2)
  const words = [
    isOwn ? say('you') : null,
    // In an outing of one group everybody who scores is equal: nobody there calls it the desk.
    say(phone.role === 'desk' && isOneGroup ? 'role-scorer' : `role-${phone.role}`),
    group,
    phone.isVoid ? say('phone-is-void') : null,
  ]
  return (
    <div className="spread">
      <b>{phone.label}</b>
      <span className="quiet">{formatDots(words)}</span>
    </div>
  )
}

function PhoneRights({ device, phone: { label: name, isVoid } }: { readonly device: DeviceId; readonly phone: Phone }) {
  if (isVoid) {
    return (
      <button type="button" className="button" onClick={() => fire(takePhoneBack(device))}>
        {say('phone-back', { name })}
      </button>
    )
  }
  return (
    <SecondTap
      label={say('phone-out', { name })}
      sure={say('phone-out-sure')}
      warning={say('phone-out-warning', { name })}
      onSure={() => fire(takePhoneOut(device))}
    />
  )
}
