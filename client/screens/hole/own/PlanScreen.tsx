import { useEffect } from 'react'
import { Link } from 'wouter'
import type { PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import { rulesRoundSaid } from '#core/plan/acts.ts'
import type { Plan } from '#core/plan/plan.ts'
import type { LogId } from '#core/values/ids.ts'
import { fire } from '../../../parts/fire.ts'
import { Loading } from '../../../parts/Loading.tsx'
import { lazyPart } from '../../../parts/later.tsx'
import { SecondTap } from '../../../parts/SecondTap.tsx'
import { usePlan } from '../../../state/plan-store.ts'
import { noteInPlan, openPlan } from '../../../state/player-log.ts'
import { notesOfHabits, sentencesOfHole } from '../../../words/plan-text.ts'
import { say } from '../../../words/say-any.ts'
import { OwnPage } from '../../bag/OwnPage.tsx'
import { NowhereScreen } from '../../home/NowhereScreen.tsx'
import { aimsPath, bagPath, holePath, sketchPath } from '../../paths.ts'
import { useGroupShown } from '../use-group-shown.ts'
import { WhichIsMine } from '../WhichIsMine.tsx'
import { type HoleAhead, holeAhead, planOfHole } from './own-plan.ts'
import { ShotInHand } from './ShotInHand.tsx'

const NumbersOfHole = lazyPart(async () => (await import('./NumbersOfHole.tsx')).NumbersOfHole)

/** What is the player's own on a hole: its plan, the shot in hand in practice, and the habits. */
export function PlanScreen({ at }: { readonly at: PlayedHole }) {
  const { outing, log, group, whose, setWhose } = useGroupShown()
  const plan = usePlan(store => store.plan)
  const isShared = usePlan(store => store.isShared)
  useEffect(() => fire(openPlan()), [])
  if (!Number.isInteger(at.hole) || !Number.isInteger(at.lap)) return <NowhereScreen />
  if (!outing || !log) return null
  if (!plan) return <Loading />
  const ahead = holeAhead(outing, whose.ball, at, plan)
  return (
    <OwnPage back={{ href: holePath(log, at), text: say('to-hole', { hole: at.hole }) }}>
      <div>
        <h1>{say('plan-title')}</h1>
        <p className="quiet">{say(isShared ? 'plan-private-shared' : 'plan-private')}</p>
      </div>
      {whose.ball === null && group ? (
        <WhichIsMine whose={whose} outing={outing} group={group} onWhose={setWhose} />
      ) : (
        <>
          <HoleSection at={at} ahead={ahead} plan={plan} />
          {ahead !== null && ahead.length !== null && (
            <NumbersOfHole log={log} outing={outing} ball={whose.ball} at={at} plan={plan} />
          )}
        </>
      )}
      <ShotSection outing={outing} plan={plan} />
      <section className="section" aria-label={say('plan-habits')}>
        <h2>{say('plan-habits')}</h2>
        <ul className="lines private">
          {notesOfHabits(plan).map(note => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      </section>
      <p className="caution">{say('caution-lightning')}</p>
      <p className="quiet">{say('caution-first')}</p>
      <Links log={log} at={at} plan={plan} />
    </OwnPage>
  )
}

interface HoleProps {
  readonly at: PlayedHole
  readonly ahead: HoleAhead | null
  readonly plan: Plan
}

function HoleSection({ at, ahead, plan }: HoleProps) {
  const found = planOfHole(plan, ahead)
  const title = titleOf(at, ahead, plan)
  return (
    <section className="private stack" aria-label={title}>
      <h2>{title}</h2>
      {found ? sentencesOfHole(found).map(line => <p key={line}>{line}</p>) : <p>{say('plan-no-length')}</p>}
    </section>
  )
}

function titleOf({ hole }: PlayedHole, ahead: HoleAhead | null, { unit }: Plan): string {
  if (ahead === null) return say('plan-hole-alone', { hole })
  const { par, length } = ahead
  if (length === null) return say('plan-hole', { hole, par })
  return say('plan-hole-long', { hole, par, length, unit: say(`unit-${unit}`) })
}

function ShotSection({ outing, plan }: { readonly outing: Outing; readonly plan: Plan }) {
  return (
    <section className="section" aria-label={say('shot-title')}>
      <h2>{say('shot-title')}</h2>
      {outing.rules ? (
        <div className="notice stack">
          <p>{say('shot-off')}</p>
          <p>{say('shot-off-stays')}</p>
        </div>
      ) : plan.rulesRounds.length > 0 ? (
        <InAnotherRound plan={plan} />
      ) : (
        <div className="private stack">
          <ShotInHand plan={plan} />
        </div>
      )}
    </section>
  )
}

/** One of the player's phones is in a round under the Rules: none of them advises on a shot until it is over. */
function InAnotherRound({ plan }: { readonly plan: Plan }) {
  const [first] = plan.rulesRounds
  if (first === undefined) return null
  return (
    <div className="notice stack">
      <p>{say('shot-off-elsewhere')}</p>
      <SecondTap
        label={say('round-over')}
        sure={say('round-over-sure')}
        warning={say('round-over-warning')}
        onSure={() => fire(noteInPlan('round over', current => rulesRoundSaid(current, first, false)))}
      />
    </div>
  )
}

function Links({ log, at, plan }: { readonly log: LogId; readonly at: PlayedHole; readonly plan: Plan }) {
  return (
    <div className="choices">
      <Link className="button" href={bagPath(log, at)}>
        {say('bag-title')}
      </Link>
      <Link className="button" href={sketchPath(log, at.hole)}>
        {say('sketch-open')}
      </Link>
      {plan.habits['six-threes'] && (
        <Link className="button" href={aimsPath(log)}>
          {say('aims-title')}
        </Link>
      )}
    </div>
  )
}
