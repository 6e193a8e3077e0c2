import { useEffect, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { LogId } from '#core/values/ids.ts'
import { say } from '../../words/say-any.ts'
import { paths } from '../paths.ts'
import { InviteAhead } from './InviteAhead.tsx'
import { isJoinPath, JoinByLink } from './JoinByLink.tsx'
import { JoinByWords } from './JoinByWords.tsx'
import { WhoAreYou } from './WhoAreYou.tsx'

/** Joins by the invite in the address, which leaves the address bar at once, or by three words. */
export function JoinScreen() {
  const [location] = useLocation()
  const [link, setLink] = useState(() => (isJoinPath(location) ? linkOf(location) : null))
  const [joined, setJoined] = useState<LogId | null>(null)
  useEffect(() => {
    if (isJoinPath(location)) setLink(linkOf(location))
  }, [location])
  useEffect(() => {
    // The secret must not stay where a screenshot, a history or a shared address shows it.
    if (link !== null) history.replaceState(null, '', `#${paths.join}`)
  }, [link])
  return (
    <div className="page">
      <main>
        <h1>{say('join-title')}</h1>
        {joined !== null && <WhoAreYou log={joined} />}
        {joined === null && link === null && <WithoutLink onJoined={setJoined} />}
        {joined === null && link !== null && <InviteAhead key={link} link={link} onJoined={setJoined} />}
        <Link className="plain-link" href={paths.home}>
          {say('home')}
        </Link>
      </main>
    </div>
  )
}

/** No invite in the address: three words, or a link that is pasted. */
function WithoutLink({ onJoined }: { readonly onJoined: (log: LogId) => void }) {
  return (
    <>
      <JoinByWords onJoined={onJoined} />
      <section className="section" aria-label={say('home-link')}>
        <h2>{say('home-link')}</h2>
        <JoinByLink />
      </section>
    </>
  )
}

const linkOf = (location: string): string => `${window.location.origin}/#${location}`
