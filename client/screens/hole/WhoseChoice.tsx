import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { say } from '../../words/say.ts'
import type { Whose } from './whose-scores.ts'

interface Props {
  readonly whose: Whose
  readonly outing: Outing
  readonly group: Group
  readonly onWhose: (whose: Whose) => void
}

/** Scores for all, or only for oneself. */
export function WhoseChoice({ whose, outing, group, onWhose }: Props) {
  if (group.balls.length < 2) return null
  const options = [
    { value: 'all', text: say('whose-all') },
    { value: 'mine', text: say('whose-mine') },
  ]
  return (
    <div className="whose">
      <Choice
        label={say('whose-scores')}
        value={whose.mode}
        options={options}
        onValue={mode => onWhose({ ...whose, mode: mode === 'mine' ? 'mine' : 'all' })}
      />
      {whose.mode === 'mine' && (
        <Choice
          label={say('which-is-mine')}
          value={whose.ball ?? ''}
          options={group.balls.map(ball => ({ value: ball, text: outing.balls.get(ball)?.name ?? ball }))}
          onValue={ball => onWhose({ ...whose, ball: ball as BallId })}
        />
      )}
    </div>
  )
}
