import { type CardScore, recordOf } from '#core/card/card.ts'
import type { HoleScore } from '#core/card/score.ts'
import { partsOfOpId } from '#core/log/op.ts'
import type { Outing } from '#core/outing/outing.ts'
import { Bar } from '../../parts/Bar.tsx'
import { candidatesOf, markOfCardScore } from '../../parts/mark.ts'
import { whoOf } from '../../parts/who-of.ts'
import { formatScore } from '../../words/figures.ts'
import { isolated } from '../../words/isolated.ts'
import { say } from '../../words/say.ts'
import { isRoundLevel } from './hole-view.ts'

interface Props {
  readonly player: string
  readonly outing: Outing
  readonly found: Extract<CardScore, { kind: 'two' }>
  readonly level: number
  readonly onScore: (score: HoleScore) => void
}

/** Whose the two scores are, and keys for those that are not among the keys round the level. */
export function TwoScores({ player, outing, found, level, onScore }: Props) {
  const candidates = candidatesOf(found)
  const beyond = candidates.filter(score => !isRoundLevel(score, level))
  return (
    <>
      <p className="two-scores">
        {say('two-scores')}{' '}
        {candidates.map((score, place) => (
          <span key={score}>
            {place > 0 && ', '}
            <b>{formatScore(score)}</b> {say('two-scores-by')} {writersOf(outing, found, score)}
          </span>
        ))}
        {' · '}
        <b>{say('choose')}</b>
      </p>
      {beyond.length > 0 && (
        <div className="choices">
          {beyond.map(score => (
            <button
              key={score}
              type="button"
              className="button key candidate"
              aria-label={say('score-key', { player, score: formatScore(score) })}
              onClick={() => onScore(score)}
            >
              {formatScore(score)}
            </button>
          ))}
        </div>
      )}
    </>
  )
}

/** The two as the strip draws them: a half for each. */
export function TwoMark({ found, level }: Pick<Props, 'found' | 'level'>) {
  return (
    <svg className="two-mark" aria-hidden="true">
      <line className="mark-line" x1="0" x2="100%" y1={15} y2={15} />
      <Bar mark={markOfCardScore(found, level)} x={10} width={80} base={15} />
    </svg>
  )
}

function writersOf(outing: Outing, found: Props['found'], score: HoleScore): string {
  const writers = found.entries
    .filter(({ value }) => value === score)
    .map(entry => {
      const who = whoOf(outing, partsOfOpId(entry.op).device)
      return recordOf(entry) === 'marker' ? say('as-marker', { who }) : isolated(who)
    })
  return [...new Set(writers)].join(' & ')
}
