import { useEffect } from 'react'
import { Link } from 'wouter'
import type { PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { fire } from '../../../parts/fire.ts'
import { usePlan } from '../../../state/plan-store.ts'
import { openPlan } from '../../../state/player-log.ts'
import { lineOfHole } from '../../../words/plan-text.ts'
import { say } from '../../../words/say-any.ts'
import { aimsPath, planPath } from '../../paths.ts'
import { holeAhead, planOfHole } from './own-plan.ts'
import { useAims } from './use-aims.ts'
import { useRulesRound } from './use-rules-round.ts'

interface Props {
  readonly log: LogId
  readonly outing: Outing
  /** The ball of this phone's owner. */
  readonly ball: BallId | null
  readonly at: PlayedHole
  /** Behind a tap on a phone that scores for others. */
  readonly isShut: boolean
}

/** One line that is the player's own: the plan for this hole, and the six targets. */
export function OwnLine({ log, outing, ball, at, isShut }: Props) {
  const plan = usePlan(store => store.plan)
  useEffect(() => fire(openPlan()), [])
  useRulesRound(log, outing, ball)
  const found = isShut || !plan ? null : planOfHole(plan, holeAhead(outing, ball, at, plan))
  return (
    <div className="private-line">
      <Link className="plain-link" href={planPath(log, at)}>
        {(found && lineOfHole(found)) ?? say('plan-title')}
      </Link>
      {plan?.habits['six-threes'] && <TargetsLink log={log} outing={outing} ball={ball} />}
    </div>
  )
}

function TargetsLink({ log, outing, ball }: Omit<Props, 'at' | 'isShut'>) {
  const [aims] = useAims(log, ball)
  const isBegun = ball !== null && (outing.cards.get(ball)?.scores.size ?? 0) > 0
  const short = say(aims === null && !isBegun ? 'aims-set' : 'aims-open')
  return (
    <Link className="plain-link" href={aimsPath(log)} aria-label={say('aims-line', { short })}>
      {short}
    </Link>
  )
}
