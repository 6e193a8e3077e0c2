import { useEffect, useState } from 'react'
import { Link } from 'wouter'
import { besideName, outingName } from '../../parts/outing-name.ts'
import { listOutings, type OutingSummary } from '../../state/actions.ts'
import { say } from '../../words/say-any.ts'
import { tabPath } from '../paths.ts'

/** The outings on this phone, the last touched first. */
export function OutingList() {
  const [outings, setOutings] = useState<readonly OutingSummary[] | null>(null)
  useEffect(() => {
    listOutings().then(setOutings, () => setOutings([]))
  }, [])
  return (
    <section className="section" aria-label={say('home-outings')}>
      <h2>{say('home-outings')}</h2>
      {outings === null && <p role="status">{say('loading')}</p>}
      {outings?.length === 0 && <p className="quiet">{say('home-empty')}</p>}
      {outings && outings.length > 0 && (
        <ul className="lines outings">
          {[...outings]
            .sort((a, b) => b.at - a.at)
            .map(outing => (
              <OutingLine key={outing.log} outing={outing} />
            ))}
        </ul>
      )}
    </section>
  )
}

function OutingLine({ outing }: { readonly outing: OutingSummary }) {
  const { log, waiting } = outing
  const rest = besideName(outing, waiting > 0 ? say('foot-to-send', { n: waiting }) : null)
  return (
    <li>
      <Link className="plain-link spread" href={tabPath(log, 'hole')}>
        <b>{outingName(outing)}</b> <span className="quiet">{rest}</span>
      </Link>
    </li>
  )
}
