import { useMemo } from 'react'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { cardChanges } from '../../parts/card-changes.ts'
import { Select } from '../../parts/Select.tsx'
import { useOuting } from '../../state/use-outing.ts'
import { formatTime } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { useWhose } from '../hole/whose-scores.ts'

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly group: Group
}

/** Every change to one's card in one list: hole, from what to what, by whom and when. */
export function CardChanges({ log, outing, group }: Props) {
  const me = useOuting(store => store.me)
  const history = useOuting(store => store.history)
  const [whose, setWhose] = useWhose(log, outing, me)
  const ball = whose.ball && group.balls.includes(whose.ball) ? whose.ball : (group.balls[0] ?? null)
  const changes = useMemo(() => (ball ? cardChanges(history, outing, ball) : []), [history, outing, ball])
  if (ball === null) return null
  return (
    <section className="section" aria-label={say('changes-title')}>
      <h2>{say('changes-title')}</h2>
      <Select
        label={say('changes-whose')}
        value={ball}
        options={group.balls.map(each => ({ value: each, text: outing.balls.get(each)?.name ?? each }))}
        onValue={value => setWhose({ ...whose, ball: value as BallId })}
      />
      {changes.length === 0 && <p className="quiet">{say('changes-none')}</p>}
      <ol className="lines">
        {changes.map(({ id, hole, from, to, who, at }) => (
          <li key={id} className="spread">
            <span>
              {say('changes-line', { hole, from })} <b>{to}</b>
            </span>
            <span className="quiet">{say('changes-by', { who, time: formatTime(at) })}</span>
          </li>
        ))}
      </ol>
    </section>
  )
}
