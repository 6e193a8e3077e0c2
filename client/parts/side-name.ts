import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'

/** "Alder & Cedar" */
export const sideName = (outing: Outing, side: readonly BallId[]): string =>
  side.map(ball => outing.balls.get(ball)?.name ?? ball).join(' & ')
