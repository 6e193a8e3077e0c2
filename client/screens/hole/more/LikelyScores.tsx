import { useState } from 'react'
import { holeKey } from '#core/card/score.ts'
import { likelyScoreFacts } from '#core/outing/acts-ball.ts'
import type { BallId } from '#core/values/ids.ts'
import { Field } from '../../../parts/Field.tsx'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import { faultOfNumber } from '../../games/game-faults.ts'
import type { MoreProps } from './MoreOnHole.tsx'

/** What a ball picked up would most likely have scored. */
export function LikelyScores(props: MoreProps) {
  const { outing, group, at } = props
  const pickedUp = group.balls.filter(ball => {
    const found = outing.cards.get(ball)?.scores.get(holeKey(at))
    return found?.kind === 'one' && found.score === 'picked-up'
  })
  if (pickedUp.length === 0) return null
  return (
    <section className="section" aria-label={say('likely-title')}>
      <h2>{say('likely-title')}</h2>
      <p className="quiet">{say('likely-hint')}</p>
      {pickedUp.map(ball => (
        <LikelyScore key={`${ball} ${holeKey(at)}`} ball={ball} {...props} />
      ))}
    </section>
  )
}

function LikelyScore({ outing, results, at, ball }: MoreProps & { readonly ball: BallId }) {
  const noted = outing.notes.likelyScores.get(ball)?.get(holeKey(at))
  const level = results.cards.get(ball)?.levels.get(holeKey(at)) ?? 4
  const [typed, setTyped] = useState<string | null>(null)
  const score = typed ?? String(noted ?? level + 2)
  const player = outing.balls.get(ball)?.name ?? ball
  const label = say('likely-of', { player })
  const fault = faultOfNumber('', label, score, 1, 30)[0]?.text
  const { isWorking, work } = useWork()
  return (
    <div className="stack">
      <Field label={label} inputMode="numeric" value={score} onValue={setTyped} fault={fault} />
      <button
        type="button"
        className="button"
        disabled={isWorking || fault !== undefined}
        onClick={() =>
          work(() => act('likely score entered', likelyScoreFacts(outing, { ball, ...at }, Number(score))))
        }
      >
        {say('likely-do', { player, score })}
      </button>
    </div>
  )
}
