import type { PlayedHole } from '#core/card/score.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import { useOuting } from '../../../state/use-outing.ts'
import { useResults } from '../../../state/use-results.ts'
import { say } from '../../../words/say-any.ts'
import { Absences } from './Absences.tsx'
import { Drives } from './Drives.tsx'
import { ExtraHoles } from './ExtraHoles.tsx'
import { GamesFromHere } from './GamesFromHere.tsx'
import { HoleOut } from './HoleOut.tsx'
import { LikelyScores } from './LikelyScores.tsx'
import { MatchMore } from './MatchMore.tsx'
import { notesOnHole } from './notes-on-hole.ts'
import { TeeShots } from './TeeShots.tsx'

/** What the sections of the page work on. */
export interface MoreProps {
  readonly outing: Outing
  readonly results: Results
  readonly group: Group
  readonly at: PlayedHole
}

/** Everything that can be said of a hole beside its scores. */
export function MoreOnHole(said: Omit<MoreProps, 'results'>) {
  const results = useResults()
  const isDesk = useOuting(store => store.me?.role === 'desk')
  if (!results) return null
  const props = { ...said, results }
  const lines = notesOnHole(props.outing, props.group, props.at)
  return (
    <div className="stack more-on-hole">
      {lines.length > 0 && (
        <section className="section" aria-label={say('noted-here')}>
          <h2>{say('noted-here')}</h2>
          <ul className="lines">
            {lines.map(line => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      <MatchMore {...props} />
      <LikelyScores {...props} />
      <TeeShots {...props} />
      <Drives {...props} />
      <ExtraHoles {...props} />
      <GamesFromHere {...props} />
      <Absences {...props} />
      {isDesk && <HoleOut key={`${props.at.hole}/${props.at.lap}`} {...props} />}
    </div>
  )
}
