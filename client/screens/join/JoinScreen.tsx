import { useEffect, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { say } from '../../words/say.ts'
import { paths } from '../paths.ts'
import { isJoinPath, JoinByLink } from './JoinByLink.tsx'
import { JoinForm } from './JoinForm.tsx'

/** Joins by the invite in the address, which leaves the address bar at once. */
export function JoinScreen() {
  const [location] = useLocation()
  const [link, setLink] = useState(() => (isJoinPath(location) ? linkOf(location) : null))
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
        {link === null ? <JoinByLink /> : <JoinForm key={link} link={link} />}
        <Link className="plain-link" href={paths.home}>
          {say('home')}
        </Link>
      </main>
    </div>
  )
}

const linkOf = (location: string): string => `${window.location.origin}/#${location}`
