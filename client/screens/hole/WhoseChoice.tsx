import type { Group, Outing } from '#core/outing/outing.ts'
import { Choice } from '../../parts/Choice.tsx'
import { say } from '../../words/say.ts'
import { WhichIsMine } from './WhichIsMine.tsx'
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
      {whose.mode === 'mine' && <WhichIsMine whose={whose} outing={outing} group={group} onWhose={onWhose} />}
    </div>
  )
}
