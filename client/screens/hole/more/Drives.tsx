import { holeKey } from '#core/card/score.ts'
import { driveFacts } from '#core/outing/acts-ball.ts'
import type { PlayerId } from '#core/values/ids.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { fire } from '../../../parts/fire.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import type { MoreProps } from './MoreOnHole.tsx'

/** Whose drive a ball of several players used here. */
export function Drives({ outing, group, at }: MoreProps) {
  const shared = group.balls.flatMap(id => outing.balls.get(id) ?? []).filter(({ players }) => players.length > 1)
  if (shared.length === 0) return null
  return (
    <section className="section" aria-label={say('drive-title')}>
      <h2>{say('drive-title')}</h2>
      {shared.map(({ id, name, players }) => (
        <Choice
          key={id}
          label={say('drive-of', { ball: name })}
          value={outing.notes.drives.get(id)?.get(holeKey(at)) ?? ''}
          options={[
            ...players.map(player => ({ value: player as string, text: outing.players.get(player)?.name ?? player })),
            { value: '', text: say('drive-none') },
          ]}
          onValue={value => {
            const player = value === '' ? null : (value as PlayerId)
            fire(act('drive used', driveFacts(outing, { ball: id, ...at }, player)))
          }}
        />
      ))}
    </section>
  )
}
