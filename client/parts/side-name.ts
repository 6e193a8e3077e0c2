import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { isolated } from '../words/isolated.ts'

/** "Alder & Cedar" */
export const sideName = (outing: Outing, side: readonly BallId[]): string =>
  side.map(ball => isolated(outing.balls.get(ball)?.name ?? ball)).join(' & ')
