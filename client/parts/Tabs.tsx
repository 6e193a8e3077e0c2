import { Link, useLocation } from 'wouter'
import type { LogId } from '#core/values/ids.ts'
import { type OutingTab, outingTabs, tabPath } from '../screens/paths.ts'
import { say } from '../words/say.ts'

/** The four parts of an outing. */
export function Tabs({ log, current }: { readonly log: LogId; readonly current: OutingTab }) {
  const [location] = useLocation()
  return (
    <nav className="tabs" aria-label={say('tabs')}>
      {outingTabs.map(tab => (
        <Link
          key={tab}
          // The hole tab of the hole page stays where it is.
          href={tab === 'hole' && tab === current ? location : tabPath(log, tab)}
          aria-current={tab === current ? 'page' : undefined}
        >
          {say(`tab-${tab}`)}
        </Link>
      ))}
    </nav>
  )
}
