import type { PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import { type HolePlan, holePlan } from '#core/plan/hole-plan.ts'
import type { Plan } from '#core/plan/plan.ts'
import type { BallId } from '#core/values/ids.ts'
import { amountIn } from '#core/values/length.ts'

/** A hole as the player's own tee has it; `length` in the player's unit, null where nobody has typed it in. */
export interface HoleAhead {
  readonly par: number
  readonly length: number | null
}

/** Null while the course lacks the hole. A ball of several players is told by the first one's tee. */
export function holeAhead(outing: Outing, ball: BallId | null, { hole }: PlayedHole, { unit }: Plan): HoleAhead | null {
  const course = outing.holes.get(hole)
  if (!course) return null
  const player = ball === null ? null : outing.balls.get(ball)?.players[0]
  const tee = outing.tees.get((player && outing.players.get(player)?.tee) ?? ('' as never))
  const amount = tee?.lengths?.byHole[hole - 1]
  return {
    par: tee?.pars?.[hole - 1] ?? course.par,
    length: tee?.lengths && amount !== undefined ? amountIn({ amount, unit: tee.lengths.unit }, unit) : null,
  }
}

export const planOfHole = (plan: Plan, ahead: HoleAhead | null): HolePlan | null =>
  ahead === null || ahead.length === null ? null : holePlan(plan, ahead.par, ahead.length)
