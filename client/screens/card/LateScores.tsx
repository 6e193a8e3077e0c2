import { partsOfOpId } from '#core/log/op.ts'
import { acceptLateFacts } from '#core/outing/acts.ts'
import type { LateScoreOfBall, Outing } from '#core/outing/outing.ts'
import { useWork } from '../../parts/use-work.ts'
import { whoOf } from '../../parts/who-of.ts'
import { act } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { formatScore, formatTime } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'

/** Scores that differ from a closed card: who, when, and the desk's tap that takes one in. */
export function LateScores({ outing }: { readonly outing: Outing }) {
  if (outing.late.length === 0) return null
  return (
    <section className="section" aria-label={say('late-title')}>
      <h2>{say('late-title')}</h2>
      <ul className="lines">
        {outing.late.map(late => (
          <Late key={`${late.op} ${late.key}`} outing={outing} late={late} />
        ))}
      </ul>
    </section>
  )
}

function Late({ outing, late }: { readonly outing: Outing; readonly late: LateScoreOfBall }) {
  const isDesk = useOuting(store => store.me?.role === 'desk')
  const state = useOuting(store => store.state)
  const { isWorking, work } = useWork()
  const { ball, hole, lap, value: score } = late
  const player = outing.balls.get(ball)?.name ?? ball
  const fill = {
    player,
    hole,
    score: formatScore(score),
    who: whoOf(outing, partsOfOpId(late.op).device),
    time: formatTime(late.at),
    closed: late.closed === null ? say('none-yet') : formatScore(late.closed),
  }
  return (
    <li className="spread">
      <span>{say('late-line', fill)}</span>
      {isDesk && (
        <button
          type="button"
          className="button"
          disabled={isWorking}
          onClick={() =>
            work(() => act('accept late score', acceptLateFacts(state, outing, { ball, hole, lap, score })))
          }
        >
          {say('late-accept', fill)}
        </button>
      )}
    </li>
  )
}
