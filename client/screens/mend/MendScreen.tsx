import { useOuting } from '../../state/use-outing.ts'
import { useResults } from '../../state/use-results.ts'
import { say } from '../../words/say-any.ts'
import { OutingPage } from '../outing/OutingPage.tsx'
import { courseOfOuting } from '../start/course-of.ts'
import { GiveCourse } from '../start/GiveCourse.tsx'
import { StrokesList } from '../strokes/StrokesList.tsx'
import { MendHole } from './MendHole.tsx'
import { MendPlayers } from './MendPlayers.tsx'
import { MendSketches } from './MendSketches.tsx'
import { MendTees } from './MendTees.tsx'

/** What was wrong from the start, put right in the middle of the round: every game follows, no score moves. */
export function MendScreen() {
  const outing = useOuting(store => store.outing)
  const results = useResults()
  const role = useOuting(store => store.me?.role ?? null)
  const log = useOuting(store => store.log)
  if (!outing || !results || !log) return null
  const course = courseOfOuting(outing)
  return (
    <OutingPage tab="card">
      <div>
        <h1>{say('mend-title')}</h1>
        <p className="quiet">{say('mend-hint')}</p>
      </div>
      {role === 'desk' ? (
        <div className="beside">
          <MendHole outing={outing} />
          <MendPlayers outing={outing} />
          {course && <MendTees key={JSON.stringify(course.tees)} outing={outing} />}
        </div>
      ) : (
        <p className="notice">{say('mend-desk')}</p>
      )}
      <div className="beside">
        <section className="section" aria-label={say('strokes-title')}>
          <h2>{say('strokes-title')}</h2>
          <StrokesList outing={outing} results={results} />
        </section>
        <MendSketches outing={outing} log={log} />
        {course && <GiveCourse course={course} />}
      </div>
    </OutingPage>
  )
}
