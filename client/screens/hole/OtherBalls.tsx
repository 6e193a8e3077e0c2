import { holeKey, type PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { candidatesOf } from '../../parts/mark.ts'
import { formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'

interface Props {
  readonly outing: Outing
  readonly balls: readonly BallId[]
  readonly at: PlayedHole
}

/** The scores of those whom this phone does not score for, in one line. */
export function OtherBalls({ outing, balls, at }: Props) {
  if (balls.length === 0) return null
  return (
    <p className="others">
      {balls.map(ball => (
        <span key={ball}>
          {outing.balls.get(ball)?.name ?? ball} <b>{wordOf(outing, ball, at)}</b>
        </span>
      ))}
    </p>
  )
}

function wordOf(outing: Outing, ball: BallId, at: PlayedHole): string {
  const found = outing.cards.get(ball)?.scores.get(holeKey(at))
  if (found?.kind === 'one') return formatScore(found.score)
  if (found?.kind === 'two') return `${say('two-scores')} ${candidatesOf(found).map(formatScore).join(', ')}`
  return say('not-yet')
}
