import type { HoleKey } from '#core/card/score.ts'
import type { SideHole } from '#core/formats/game-result.ts'
import type { BallId } from '#core/values/ids.ts'
import type { HoleAndLap } from './facts.ts'
import type { Outing } from './outing.ts'
import type { SettledHole, SettledSideHole } from './settle-output-games.ts'

/** `7/1` taken apart. */
export function settledHole(key: HoleKey): SettledHole {
  const [hole = 0, lap = 0] = key.split('/').map(Number)
  return { hole, lap }
}

export const settledAt = (at: HoleAndLap | null): SettledHole | null => at && { hole: at[0], lap: at[1] }

export const sideHole = (side: SideHole): SettledSideHole => ({
  kind: side.kind,
  value: side.kind === 'value' ? side.value : null,
  values: side.kind === 'two' ? side.values : [],
  balls: side.kind === 'value' ? side.balls : [],
})

export const namesOf = (outing: Outing, side: readonly BallId[]): string[] =>
  side.map(ball => outing.balls.get(ball)?.name ?? ball)
