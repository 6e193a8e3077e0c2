import { useEffect, useRef } from 'react'
import type { HoleScore } from '#core/card/score.ts'
import { formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'
import { isRoundLevel, keySteps } from './hole-view.ts'
import { ScoreKey } from './ScoreKey.tsx'

interface Props {
  readonly player: string
  readonly level: number
  readonly chosen: HoleScore | null
  readonly candidates: readonly HoleScore[]
  readonly onScore: (score: HoleScore) => void
  readonly onMore: () => void
  /** True when the other scores have just been closed. */
  readonly isBack: boolean
}

/** The keys round the level: two below to two above, then more. */
export function Keys({ player, level, chosen, candidates, onScore, onMore, isBack }: Props) {
  const isBeyond = chosen !== null && !isRoundLevel(chosen, level)
  return (
    <fieldset>
      <legend className="hidden">{say('score-keys', { player })}</legend>
      <div className="keys">
        {keySteps.map(step =>
          level + step < 1 ? (
            <span key={step} />
          ) : (
            <ScoreKey
              key={step}
              player={player}
              score={level + step}
              level={level}
              isChosen={level + step === chosen}
              isCandidate={candidates.includes(level + step)}
              onScore={onScore}
            />
          ),
        )}
        <MoreKey player={player} chosen={isBeyond ? chosen : null} onMore={onMore} isBack={isBack} />
      </div>
    </fieldset>
  )
}

interface MoreProps {
  readonly player: string
  readonly chosen: HoleScore | null
  readonly onMore: () => void
  readonly isBack: boolean
}

/** Opens the other scores, and shows the one chosen among them. */
function MoreKey({ player, chosen, onMore, isBack }: MoreProps) {
  const key = useRef<HTMLButtonElement>(null)
  const backAtFirst = useRef(isBack)
  useEffect(() => {
    if (backAtFirst.current) key.current?.focus({ preventScroll: true })
  }, [])
  const name = say('more-of', { player })
  return (
    <button
      ref={key}
      type="button"
      className={chosen === null ? 'key more' : 'key more chosen'}
      aria-expanded={false}
      aria-label={chosen === null ? name : `${name}, ${formatScore(chosen)}`}
      onClick={onMore}
    >
      {typeof chosen === 'number' ? <b>{chosen}</b> : chosen === null ? say('more') : formatScore(chosen)}
    </button>
  )
}
