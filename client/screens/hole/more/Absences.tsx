import { joinFacts, leaveFacts, presentFacts } from '#core/outing/acts-ball.ts'
import type { BallId } from '#core/values/ids.ts'
import { SecondTap } from '../../../parts/SecondTap.tsx'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say.ts'
import type { MoreProps } from './MoreOnHole.tsx'

/** Somebody leaves, comes late, or is there for the whole round after all. */
export function Absences(props: MoreProps) {
  return (
    <section className="section" aria-label={say('absence-title')}>
      <h2>{say('absence-title')}</h2>
      {props.group.balls.map(ball => (
        <Absence key={ball} ball={ball} {...props} />
      ))}
    </section>
  )
}

function Absence({ outing, at, ball }: MoreProps & { readonly ball: BallId }) {
  const { isWorking, work } = useWork()
  const player = outing.balls.get(ball)?.name ?? ball
  const fill = { player, hole: at.hole }
  return (
    <div className="choices">
      {outing.notes.absences.has(ball) ? (
        <button
          type="button"
          className="button"
          disabled={isWorking}
          onClick={() => work(() => act('present', presentFacts(outing, ball)))}
        >
          {say('present-do', fill)}
        </button>
      ) : (
        <>
          <SecondTap
            label={say('leaves-do', fill)}
            sure={say('leaves-sure', fill)}
            warning={say('leaves-hint')}
            onSure={() => work(() => act('left', leaveFacts(outing, ball, at, null)))}
          />
          <button
            type="button"
            className="button"
            disabled={isWorking}
            onClick={() => work(() => act('joined', joinFacts(outing, ball, at, null)))}
          >
            {say('joins-do', fill)}
          </button>
        </>
      )}
    </div>
  )
}
