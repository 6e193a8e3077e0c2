import { holeKey, type PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import { pickUpFrom } from '#core/outing/pick-up-hint.ts'
import type { Results } from '#core/outing/results.ts'
import type { BallId } from '#core/values/ids.ts'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say.ts'

interface Props {
  readonly outing: Outing
  readonly results: Results
  readonly balls: readonly BallId[]
  readonly at: PlayedHole
}

/** After how many strokes a ball still out may be picked up, in one line; nothing where every stroke counts. */
export function PickUpHint({ outing, results, balls, at }: Props) {
  const open = balls.filter(ball => (outing.cards.get(ball)?.scores.get(holeKey(at))?.kind ?? 'none') === 'none')
  const told = open.flatMap(ball => {
    const from = pickUpFrom(outing, results, ball, at)
    return from === null ? [] : [say('pick-up-each', { player: outing.balls.get(ball)?.name ?? ball, n: from - 1 })]
  })
  if (told.length === 0) return null
  return <p className="hint">{say('pick-up-from', { list: formatList(told) })}</p>
}
