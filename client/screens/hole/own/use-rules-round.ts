import { useEffect } from 'react'
import type { Outing } from '#core/outing/outing.ts'
import { rulesRoundSaid } from '#core/plan/acts.ts'
import { isInRulesRound } from '#core/plan/rules-round.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { fire } from '../../../parts/fire.ts'
import { usePlan } from '../../../state/plan-store.ts'
import { noteInPlan } from '../../../state/player-log.ts'

/** Tells the player's other phones, through the player's own log, while this outing is a round under the Rules for them. */
export function useRulesRound(log: LogId, outing: Outing, ball: BallId | null): void {
  const isShared = usePlan(store => store.isShared)
  const isSaid = usePlan(({ plan }) => plan?.rulesRounds.includes(log) === true)
  // A phone that knows no ball of its owner's leaves what another of theirs has said.
  const isIn = ball === null ? isSaid : isInRulesRound(outing, ball)
  useEffect(() => {
    if (isShared && isIn !== isSaid)
      fire(noteInPlan(isIn ? 'round begun' : 'round over', plan => rulesRoundSaid(plan, log, isIn)))
  }, [log, isShared, isIn, isSaid])
}
