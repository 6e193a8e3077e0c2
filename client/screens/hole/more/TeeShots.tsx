import { teeShotFacts } from '#core/outing/acts-ball.ts'
import { ballsInTurn, teeShotOf } from '#core/outing/tee-shot.ts'
import type { PlayerId } from '#core/values/ids.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { fire } from '../../../parts/fire.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import type { MoreProps } from './MoreOnHole.tsx'

/** Which partner of foursomes tees off here, and in turn from here on. */
export function TeeShots({ outing, group, at }: MoreProps) {
  const balls = ballsInTurn(outing).filter(({ id }) => group.balls.includes(id))
  if (balls.length === 0) return null
  return (
    <section className="section" aria-label={say('tee-shot-title')}>
      <h2>{say('tee-shot-title')}</h2>
      <p className="quiet">{say('tee-shot-hint')}</p>
      {balls.map(ball => (
        <Choice
          key={ball.id}
          label={say('tee-shot-from', { ball: ball.name, hole: at.hole })}
          value={teeShotOf(outing, ball, at) ?? ''}
          options={ball.players.map(player => ({
            value: player as string,
            text: outing.players.get(player)?.name ?? player,
          }))}
          onValue={player => fire(act('tee shot', teeShotFacts(outing, { ball: ball.id, ...at }, player as PlayerId)))}
        />
      ))}
    </section>
  )
}
