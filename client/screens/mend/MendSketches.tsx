import { Link } from 'wouter'
import type { Outing } from '#core/outing/outing.ts'
import type { LogId } from '#core/values/ids.ts'
import { say } from '../../words/say-any.ts'
import { sketchPath } from '../paths.ts'

/** The way to the sketch of every hole; a hole that has one says so. */
export function MendSketches({ outing, log }: { readonly outing: Outing; readonly log: LogId }) {
  const holes = [...outing.holes.keys()]
  const { sketches } = outing
  return (
    <section className="section" aria-label={say('sketch-mend')}>
      <h2>{say('sketch-mend')}</h2>
      <p className="quiet">
        {say('sketch-mend-hint', { n: holes.filter(hole => sketches.has(hole)).length, of: holes.length })}
      </p>
      <div className="choices hole-keys">
        {holes.map(hole => (
          <Link key={hole} className={sketches.has(hole) ? 'button drawn' : 'button'} href={sketchPath(log, hole)}>
            <span className="hidden">{say('sketch-title', { hole })}</span>
            <span aria-hidden="true">{hole}</span>
            {sketches.has(hole) && <span className="hidden">, {say('sketch-drawn')}</span>}
          </Link>
        ))}
      </div>
    </section>
  )
}
