import { useLocation } from 'wouter'
import type { BallId, LogId } from '#core/values/ids.ts'
import { outingName } from '../../parts/outing-name.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { rememberWhose } from '../hole/whose-scores.ts'
import { tabPath } from '../paths.ts'

/** In: the outing's title, and which of its players has this phone. */
export function WhoAreYou({ log }: { readonly log: LogId }) {
  const outing = useOuting(store => store.outing)
  const [, go] = useLocation()
  const enter = (ball: BallId | null): void => {
    if (ball) rememberWhose(log, { mode: 'all', ball, marks: null })
    go(tabPath(log, 'hole'))
  }
  return (
    <section className="section" aria-label={say('join-you-are')}>
      {outing && <h2>{outingName(outing)}</h2>}
      <p>{say('join-you-are')}</p>
      {[...(outing?.balls.values() ?? [])].map(({ id, name }) => (
        <button key={id} type="button" className="button" onClick={() => enter(id)}>
          {name}
        </button>
      ))}
      <button type="button" className="button" onClick={() => enter(null)}>
        {say('join-none-of-these')}
      </button>
    </section>
  )
}
