import { holeKey } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import { fire } from '../../parts/fire.ts'
import { chooseScore, enterScore } from '../../state/actions.ts'
import type { Tap } from './score-guard.ts'

/** One of two scores is chosen; any other score goes into the record that this phone keeps. */
export function writeScore(outing: Outing, tap: Tap, isMarked: boolean): void {
  const found = outing.cards.get(tap.ball)?.scores.get(holeKey(tap))
  if (found?.kind === 'two' && tap.score !== null) fire(chooseScore({ ...tap, score: tap.score }))
  else fire(enterScore({ ...tap, isMarked }))
}
