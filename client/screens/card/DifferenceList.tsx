import type { BallId } from '#core/values/ids.ts'
import { fire } from '../../parts/fire.ts'
import { chooseScore } from '../../state/actions.ts'
import { formatScore } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import type { DifferenceLine } from './certify-view.ts'

interface Props {
  readonly player: string
  readonly ball: BallId
  readonly lines: readonly DifferenceLine[]
  readonly canChoose: boolean
}

/** Holes where the records differ, each with its scores to choose from, and holes that changed since. */
export function DifferenceList({ player, ball, lines, canChoose }: Props) {
  return (
    <ul className="notice">
      {lines.map(({ text, hole, lap, choices }) => (
        <li key={text} className="spread">
          <span>{text}</span>
          {canChoose && choices.length > 1 && (
            <span className="choices">
              {choices.map(score => (
                <button
                  key={score}
                  type="button"
                  className="button"
                  aria-label={say('certify-choose', { player, hole, score: formatScore(score) })}
                  onClick={() => fire(chooseScore({ ball, hole, lap, score }))}
                >
                  {formatScore(score)}
                </button>
              ))}
            </span>
          )}
        </li>
      ))}
    </ul>
  )
}
