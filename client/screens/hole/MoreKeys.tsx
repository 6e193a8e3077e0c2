import { useEffect, useRef } from 'react'
import { type HoleScore, unholedScores } from '#core/card/score.ts'
import { formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'

interface Props {
  readonly player: string
  readonly chosen: HoleScore | null
  readonly candidates: readonly HoleScore[]
  /** Null clears the hole; not offered where nothing single stands. */
  readonly onScore: (score: HoleScore | null) => void
  readonly onBack: () => void
}

const numbers: readonly number[] = Array.from({ length: 15 }, (_, place) => place + 1)

/** Every score from 1 to 15, and what else may become of a ball on a hole. */
export function MoreKeys({ player, chosen, candidates, onScore, onBack }: Props) {
  const keys = useRef<HTMLDivElement>(null)
  useEffect(() => {
    keys.current?.scrollIntoView({ block: 'nearest' })
    // The key that was pressed is gone: its place is here.
    keys.current?.querySelector('button')?.focus({ preventScroll: true })
  }, [])
  return (
    <fieldset>
      <legend className="hidden">{say('score-keys', { player })}</legend>
      <div className="more-keys" ref={keys}>
        {[...numbers, ...unholedScores].map(score => (
          <button
            key={score}
            type="button"
            className={keyClass(score, candidates)}
            aria-pressed={score === chosen}
            aria-label={say('score-key', { player, score: formatScore(score) })}
            onClick={() => onScore(score)}
          >
            {typeof score === 'number' ? <b>{score}</b> : formatScore(score)}
          </button>
        ))}
        {chosen !== null && (
          <button
            type="button"
            className="key word last"
            aria-label={say('clear-of', { player })}
            onClick={() => onScore(null)}
          >
            {say('clear')}
          </button>
        )}
        <button type="button" className="key more word back" aria-label={say('less-of', { player })} onClick={onBack}>
          {say('less')}
        </button>
      </div>
    </fieldset>
  )
}

function keyClass(score: HoleScore, candidates: readonly HoleScore[]): string {
  const word = typeof score === 'number' ? '' : ' word'
  return `key${word}${candidates.includes(score) ? ' candidate' : ''}`
}
