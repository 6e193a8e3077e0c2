import { useState } from 'react'
import { joinFacts, leaveFacts, noShowFacts, presentFacts, withdrawFacts } from '#core/outing/acts-ball.ts'
import type { BallId } from '#core/values/ids.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { SecondTap } from '../../../parts/SecondTap.tsx'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import type { MoreProps } from './MoreOnHole.tsx'

/** Somebody leaves, withdraws, does not come, comes late, or is there for the whole round after all. */
export function Absences(props: MoreProps) {
  const { outing, group } = props
  const [chosen, setChosen] = useState<BallId | null>(null)
  return (
    <section className="section" aria-label={say('absence-title')}>
      <h2>{say('absence-title')}</h2>
      <Choice
        label={say('absence-who')}
        value={chosen ?? ''}
        options={group.balls.map(ball => ({ value: ball, text: outing.balls.get(ball)?.name ?? ball }))}
        onValue={value => setChosen(value as BallId)}
      />
      {chosen && <Absence key={chosen} ball={chosen} {...props} />}
    </section>
  )
}

function Absence({ outing, at, ball }: MoreProps & { readonly ball: BallId }) {
  const { isWorking, work } = useWork()
  const player = outing.balls.get(ball)?.name ?? ball
  const fill = { player, hole: at.hole }
  const put = (name: string, facts: ReturnType<typeof joinFacts>) => () => work(() => act(name, facts))
  if (outing.notes.absences.has(ball)) {
    return (
      <button
        type="button"
        className="button"
        disabled={isWorking}
        onClick={put('there for the round', presentFacts(outing, ball))}
      >
        {say('present-do', fill)}
      </button>
    )
  }
  return (
    <>
      <button
        type="button"
        className="button"
        disabled={isWorking}
        onClick={put('joined late', joinFacts(outing, ball, at, null))}
      >
        {say('joins-do', fill)}
      </button>
      <SecondTap
        label={say('leaves-do', fill)}
        sure={say('leaves-sure', fill)}
        warning={say('leaves-hint')}
        onSure={put('left', leaveFacts(outing, ball, at, null))}
      />
      <SecondTap
        label={say('withdraws-do', fill)}
        sure={say('withdraws-sure', fill)}
        warning={say('withdraws-hint')}
        onSure={put('withdrawn', withdrawFacts(outing, ball, at, null))}
      />
      <SecondTap
        label={say('no-show-do', fill)}
        sure={say('no-show-sure', fill)}
        warning={say('no-show-hint')}
        onSure={put('no show', noShowFacts(outing, ball, null))}
      />
    </>
  )
}
