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

/** Which ball of the group is the phone's owner's. */
export function WhichIsMine({ whose, outing, group, onWhose }: Props) {
  return (
    <Choice
      label={say('which-is-mine')}
      value={whose.ball ?? ''}
      options={group.balls.map(ball => ({ value: ball, text: outing.balls.get(ball)?.name ?? ball }))}
      onValue={ball => onWhose({ ...whose, ball: ball as BallId })}
    />
  )
}
