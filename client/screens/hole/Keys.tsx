import type { HoleScore } from '#core/card/score.ts'
import { formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'
import { keysRound } from './hole-view.ts'
import { ScoreKey } from './ScoreKey.tsx'

interface Props {
  readonly player: string
  readonly level: number
  readonly chosen: HoleScore | null
  readonly candidates: readonly HoleScore[]
  readonly onScore: (score: HoleScore) => void
  readonly onMore: () => void
}

/** The keys round the level: two below to two above, then more. */
export function Keys({ player, level, chosen, candidates, onScore, onMore }: Props) {
  const round = keysRound(level)
  const isBeyond = chosen !== null && !round.includes(typeof chosen === 'number' ? chosen : -1)
  return (
    <fieldset>
      <legend className="hidden">{say('score-keys', { player })}</legend>
      <div className="keys">
        {round.map((score, place) =>
          score === null ? (
            <span key={`none ${place - 2}`} />
          ) : (
            <ScoreKey
              key={place - 2}
              player={player}
              score={score}
              level={level}
              isChosen={score === chosen}
              isCandidate={candidates.includes(score)}
              onScore={onScore}
            />
          ),
        )}
        <MoreKey player={player} chosen={isBeyond ? chosen : null} onMore={onMore} />
      </div>
    </fieldset>
  )
}

interface MoreProps {
  readonly player: string
  readonly chosen: HoleScore | null
  readonly onMore: () => void
}

/** Opens the other scores, and shows the one chosen among them. */
function MoreKey({ player, chosen, onMore }: MoreProps) {
  const name = say('more-of', { player })
  return (
    <button
      type="button"
      className="key more"
      aria-expanded={false}
      aria-pressed={chosen === null ? undefined : true}
      aria-label={chosen === null ? name : `${name}, ${formatScore(chosen)}`}
      onClick={onMore}
    >
      {typeof chosen === 'number' ? <b>{chosen}</b> : chosen === null ? say('more') : formatScore(chosen)}
    </button>
  )
}
