import type { PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { BallRow } from '../hole/BallRow.tsx'
import { HeldScores } from '../hole/HeldScores.tsx'
import { useScoreGuard } from '../hole/use-score-guard.ts'
import { writeScore } from '../hole/write-score.ts'

interface Props {
  readonly outing: Outing
  readonly ball: BallId
  readonly at: PlayedHole
  readonly onDone: () => void
}

/**
 * The keys of one box of the card. Whoever opened it has said which hole and whose, so only a burst is asked about.
 */
export function BoxKeys({ outing, ball, at, onDone }: Props) {
  const levels = useOuting(store => store.levels)
  const write = (score: Parameters<typeof writeScore>[1]): void => {
    writeScore(outing, score, false)
    onDone()
  }
  const { guard, put, answer } = useScoreGuard(() => true, write)
  if (!levels) return null
  return (
    <>
      <p className="quiet">{say('hole-n', { hole: at.hole })}</p>
      <BallRow
        outing={outing}
        levels={levels}
        ball={ball}
        at={at}
        label={`${outing.balls.get(ball)?.name ?? ball}, ${say('hole-n', { hole: at.hole })}`}
        isYou={false}
        teesOff=""
        hasHonour={false}
        isMarked={false}
        canScore
        onScore={score => put({ ball, ...at, score })}
      />
      {guard.reason !== null && <HeldScores guard={guard} outing={outing} inPlay={null} onAnswer={answer} />}
    </>
  )
}
