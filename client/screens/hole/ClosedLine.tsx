import type { Levels } from '#core/outing/levels.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { threeWords } from '../../parts/strip-view.ts'
import { formatOver } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { threeOf } from './hole-view.ts'

interface Props {
  readonly outing: Outing
  readonly levels: Pick<Levels, 'cards'>
  readonly balls: readonly BallId[]
  readonly three: number
}

/** The three just closed, in one line: everybody's sum against the level. */
export function ClosedLine({ outing, levels, balls, three }: Props) {
  return (
    <div className="ball-row">
      <p>{say('three-closed', { three: threeWords(three) })}</p>
      <p className="spread">
        {balls.map(ball => {
          const sum = threeOf(levels, ball, three)?.overLevel ?? null
          return (
            <span key={ball}>
              {outing.balls.get(ball)?.name ?? ball} <b>{sum === null ? '' : formatOver(sum)}</b>
            </span>
          )
        })}
      </p>
    </div>
  )
}
