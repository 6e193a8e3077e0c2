import type { HoleScore } from '#core/card/score.ts'
import { Bar } from '../../parts/Bar.tsx'
import { markOfScore } from '../../parts/mark.ts'
import { formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'

interface Props {
  readonly player: string
  readonly score: HoleScore
  readonly level: number
  readonly isChosen: boolean
  /** One of two scores that wait for a choice. */
  readonly isCandidate: boolean
  readonly onScore: (score: HoleScore) => void
}

/** One key: the score and, under it, the bar that it will draw. */
export function ScoreKey({ player, score, level, isChosen, isCandidate, onScore }: Props) {
  const looks = ['key', score === level && 'level', isCandidate && 'candidate'].filter(Boolean).join(' ')
  const mark = markOfScore(score, level)
  const isNarrow = score === level
  return (
    <button
      type="button"
      className={looks}
      aria-pressed={isChosen}
      aria-label={say('score-key', { player, score: formatScore(score) })}
      onClick={() => onScore(score)}
    >
      <b>{score}</b>
      <svg aria-hidden="true">
        <line className="mark-line" x1="0" x2="100%" y1={15} y2={15} />
        <Bar mark={mark} x={isNarrow ? 39 : 29} width={isNarrow ? 22 : 42} base={15} />
      </svg>
    </button>
  )
}
