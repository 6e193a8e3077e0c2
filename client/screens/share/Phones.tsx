import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say.ts'

/** The phones that are in, by the names they gave. */
export function Phones() {
  const phones = useOuting(store => store.outing?.phones ?? null)
  const own = useOuting(store => store.me?.device ?? null)
  if (!phones || phones.size === 0) return null
  return (
    <section className="section" aria-label={say('share-phones')}>
      <h2>{say('share-phones')}</h2>
      <ul className="lines">
        {[...phones].map(([device, phone]) => (
          <li key={device} className="spread">
            <b>{phone.label}</b>
            <span className="quiet">
              {[
                device === own ? say('you') : null,
                say(`role-${phone.role}`),
                phone.isVoid ? say('phone-is-void') : null,
              ]
                .filter(Boolean)
                .join(' · ')}
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}
