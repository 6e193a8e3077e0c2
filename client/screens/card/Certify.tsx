import { markerFacts } from '#core/outing/acts-ball.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Select } from '../../parts/Select.tsx'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say.ts'
import { useWhose } from '../hole/whose-scores.ts'
import { CertifyBall } from './CertifyBall.tsx'

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly group: Group
}

/** Each card of the group with what player and marker stand by, and whoever holds this phone certifies. */
export function Certify({ log, outing, group }: Props) {
  const me = useOuting(store => store.me)
  const [whose, setWhose] = useWhose(log, outing, me)
  const { work } = useWork()
  const canWrite = me?.role === 'desk' || me?.role === 'scorer'
  const nameOf = (ball: BallId): string => outing.balls.get(ball)?.name ?? ball
  const others = group.balls.filter(ball => ball !== whose.ball)
  const marks = whose.marks !== null && others.includes(whose.marks) ? whose.marks : null
  const mark = (ball: BallId | null): void => {
    setWhose({ ...whose, marks: ball })
    const own = whose.ball && outing.balls.get(whose.ball)?.players[0]
    // Whose record it is: the marker's name goes with it, where this phone is somebody's.
    if (ball && own) work(() => act('marker named', markerFacts(outing, ball, own)))
  }
  return (
    <section className="section" aria-label={say('certify-title')}>
      <h2>{say('certify-title')}</h2>
      <p className="quiet">{say('certify-hint')}</p>
      {canWrite && (
        <>
          <Choice
            label={say('certify-phone')}
            value={whose.ball ?? ''}
            options={[
              ...group.balls.map(ball => ({ value: ball as string, text: nameOf(ball) })),
              { value: '', text: say('certify-nobody') },
            ]}
            onValue={value => setWhose({ ...whose, ball: value === '' ? null : (value as BallId) })}
          />
          {others.length > 0 && (
            <Select
              label={say('certify-marks')}
              value={marks ?? ''}
              options={[
                { value: '', text: say('certify-marks-nobody') },
                ...others.map(ball => ({ value: ball as string, text: nameOf(ball) })),
              ]}
              onValue={value => mark(value === '' ? null : (value as BallId))}
            />
          )}
          {marks && <p className="quiet">{say('certify-marks-hint', { player: nameOf(marks) })}</p>}
        </>
      )}
      {group.balls.map(ball => (
        <CertifyBall key={ball} outing={outing} group={group} ball={ball} holder={canWrite ? whose.ball : null} />
      ))}
    </section>
  )
}
