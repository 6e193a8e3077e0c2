import { Link } from 'wouter'
import type { Three } from '#core/outing/results.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { threeWords } from '../../../parts/strip-view.ts'
import { formatOver } from '../../../words/figures.ts'
import { say } from '../../../words/say-any.ts'
import { aimsPath } from '../../paths.ts'
import { useAims } from './use-aims.ts'

interface Props {
  readonly log: LogId
  readonly ball: BallId
  readonly closed: Three
  /** Null after the last three. */
  readonly next: Three | null
  /** Behind a tap on a phone that scores for others: Rules of Golf 2023, rule 10.2, keeps a plan one's own. */
  readonly isShut: boolean
}

/** The player's own: how the last three did against its target, the next target, and the cue. */
export function AimsOfThree(props: Props) {
  if (!props.isShut) {
    return (
      <section className="private" aria-label={say('aims-own')}>
        <Aims {...props} />
      </section>
    )
  }
  return (
    <details className="private">
      <summary>{say('aims-own')}</summary>
      <Aims {...props} />
    </details>
  )
}

function Aims({ log, ball, closed, next }: Props) {
  const [aims] = useAims(log, ball)
  const [before, target] = [aims?.targets[closed.number - 1], next && aims?.targets[next.number - 1]]
  const strokes = closed.overLevel === null ? null : closed.level + closed.overLevel
  return (
    <div className="aims">
      {before !== undefined && strokes !== null && (
        <p>
          {say('aims-closed', { three: threeWords(closed.number), strokes, target: before })}{' '}
          <b>{say('aims-against', { over: formatOver(strokes - before, 'on-target') })}</b>
        </p>
      )}
      {next && (
        <p>
          {target == null ? (
            say('aims-none-level', { level: next.level })
          ) : (
            <>
              <b className="own-figure">{target}</b> {say('aims-is-target', { level: next.level })}
            </>
          )}
        </p>
      )}
      {next && aims?.cue && <p className="aims-cue">{say('aims-quoted', { cue: aims.cue })}</p>}
      <Link className="plain-link" href={aimsPath(log)}>
        {say('aims-change')}
      </Link>
    </div>
  )
}
