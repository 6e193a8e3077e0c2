import { useState } from 'react'
import { type CardScore, recordOf } from '#core/card/card.ts'
import { type HoleScore, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { Levels } from '#core/outing/levels.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { candidatesOf } from '../../parts/mark.ts'
import { formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'
import { Keys } from './Keys.tsx'
import { MoreKeys } from './MoreKeys.tsx'
import { strokesHere } from './strokes-here.ts'
import { Ticks } from './Ticks.tsx'
import { TwoMark, TwoScores } from './TwoScores.tsx'

interface Props {
  readonly outing: Outing
  readonly levels: Levels
  readonly ball: BallId
  readonly at: PlayedHole
  /** How the row is heard; the player's name when left out. */
  readonly label?: string
  readonly isYou: boolean
  /** Which of its partners has the tee shot; empty where they do not take turns. */
  readonly teesOff: string
  /** True for a ball that tees off first here. */
  readonly hasHonour: boolean
  /** True where this phone keeps the marker's record of the ball. */
  readonly isMarked: boolean
  /** False on a phone that only watches. */
  readonly canScore: boolean
  /** A key of this row was pressed; null clears the hole. */
  readonly onScore: (score: HoleScore | null) => void
}

/** One player on this hole: strokes here, and the keys. */
export function BallRow(props: Props) {
  const { outing, levels, ball, at, label, isYou, teesOff, hasHonour, isMarked, canScore, onScore } = props
  const [isMore, setMore] = useState(false)
  const [hasBeenMore, setBeenMore] = useState(false)
  const key = holeKey(at)
  const player = outing.balls.get(ball)?.name ?? ball
  const card = outing.cards.get(ball)
  const found = card?.scores.get(key) ?? { kind: 'none' as const }
  const level = levels.cards.get(ball)?.levels.get(key) ?? outing.holes.get(at.hole)?.par ?? 4
  const settled = found.kind === 'one' ? found.score : null
  // The marker's keys show the marker's own record, so that it is not taken for written.
  const chosen = isMarked && found.kind === 'one' ? markerScore(found) : settled
  const closeMore = (): void => {
    setMore(false)
    setBeenMore(isMore)
  }
  const put = (score: HoleScore | null): void => {
    closeMore()
    if (score !== chosen) onScore(score)
  }
  const said = [isYou && say('you'), hasHonour && say('honour'), teesOff, isMarked && say('you-mark')].filter(Boolean)
  const shared = { player, chosen, candidates: candidatesOf(found) }
  return (
    <section className="ball-row" aria-label={label ?? player}>
      <div className="ball-head">
        <h2>{player}</h2>
        {said.length > 0 && <span className="quiet">{said.join(' · ')}</span>}
        {isMarked && chosen === null && settled !== null && (
          <span className="quiet">{say('on-the-card', { score: formatScore(settled) })}</span>
        )}
        {found.kind === 'two' && <TwoMark found={found} level={level} />}
        <Ticks strokes={strokesHere(outing, levels.prepared, ball, key)} />
        {found.kind === 'two' && (
          <TwoScores player={player} outing={outing} found={found} level={level} onScore={put} />
        )}
      </div>
      {!canScore && <p>{chosen === null ? say('not-yet') : formatScore(chosen)}</p>}
      {canScore && isMore && <MoreKeys {...shared} onScore={put} onBack={closeMore} />}
      {canScore && !isMore && (
        <Keys {...shared} level={level} onScore={put} onMore={() => setMore(true)} isBack={hasBeenMore} />
      )}
      {card?.isClosed && <p className="quiet">{say('card-closed')}</p>}
    </section>
  )
}

const markerScore = ({ entries }: Extract<CardScore, { kind: 'one' }>): HoleScore | null =>
  entries.find(entry => recordOf(entry) === 'marker')?.value ?? null
