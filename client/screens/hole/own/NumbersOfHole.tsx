import { useCallback, useMemo } from 'react'
import { Link } from 'wouter'
import type { PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import { enoughNumbers } from '#core/plan/bag.ts'
import type { Golfer } from '#core/plan/golfer.ts'
import type { Plan } from '#core/plan/plan.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { useWorkedOut } from '../../../parts/use-worked-out.ts'
import { linesOfAdvice, worthText } from '../../../words/hole-advice-text.ts'
import { say } from '../../../words/say-any.ts'
import { golferOfPlan } from '../../bag/golfer-of-plan.ts'
import { sketchPath } from '../../paths.ts'
import { numbersOfHole } from './hole-numbers.ts'
import { TenStrokesPicture } from './TenStrokesPicture.tsx'

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly ball: BallId | null
  readonly at: PlayedHole
  readonly plan: Plan
}

/** What published figures say of a hole for this player, beside the habits; of use before the hole is played. */
export function NumbersOfHole(props: Props) {
  const { plan } = props
  const golfer = useMemo(() => golferOfPlan(plan), [plan])
  return (
    <section className="section" aria-label={say('figures-title')}>
      <h2>{say('figures-title')}</h2>
      {golfer === null ? (
        <p className="quiet">
          {say(plan.bag.clubs.length < enoughNumbers ? 'figures-few-clubs' : 'numbers-ask-index')}
        </p>
      ) : (
        <Worked {...props} golfer={golfer} />
      )}
    </section>
  )
}

function Worked({ log, outing, ball, at: { hole, lap }, plan, golfer }: Props & { readonly golfer: Golfer }) {
  const numbers = useWorkedOut(
    useCallback(
      () => numbersOfHole(outing, ball, { hole, lap }, plan, golfer),
      [outing, ball, hole, lap, plan, golfer],
    ),
  )
  if (numbers === undefined) return <p role="status">{say('figures-working')}</p>
  if (numbers === null) return <p className="quiet">{say('plan-no-length')}</p>
  const { known, advice, worth, pictures } = numbers
  return (
    <>
      <div className="private stack">
        <p className={worth === null ? 'quiet' : 'own-answer'}>
          {worth === null ? say('numbers-ask-ratings') : worthText(worth)}
        </p>
        {linesOfAdvice(advice, known, plan.unit).map(line => (
          <p key={line}>{line}</p>
        ))}
        {pictures.map(({ at, picture, aimRightYd }) => (
          <TenStrokesPicture
            key={at}
            title={say(`ten-${at}`)}
            picture={picture}
            aimRightYd={aimRightYd}
            unit={plan.unit}
          />
        ))}
        {pictures.length > 0 && <p className="quiet">{say('ten-legend')}</p>}
      </div>
      <p className="quiet">{say('numbers-what')}</p>
      {known.sketch === null && (
        <>
          <p className="quiet">{say('numbers-no-sketch')}</p>
          <Link className="plain-link" href={sketchPath(log, hole)}>
            {say('numbers-draw')}
          </Link>
        </>
      )}
    </>
  )
}
