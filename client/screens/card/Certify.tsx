import { useState } from 'react'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { mayScore } from '../../state/outing-store.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { useWhose } from '../hole/whose-scores.ts'
import { CertifyBall } from './CertifyBall.tsx'
import { Markers } from './Markers.tsx'

interface Props {
  readonly log: LogId
  readonly outing: Outing
  readonly group: Group
}

/** Each card of the group with what player and marker stand by, and whoever holds this phone certifies. */
export function Certify({ log, outing, group }: Props) {
  const me = useOuting(store => store.me)
  const [whose, setWhose] = useWhose(log, outing, me)
  // A phone that goes round for everybody's tap stays its owner's.
  const [passedTo, setPassedTo] = useState<BallId | 'nobody' | null>(null)
  const holder = passedTo === 'nobody' ? null : (passedTo ?? whose.ball)
  const canWrite = mayScore(me)
  const hold = (ball: BallId | null): void => {
    setPassedTo(ball ?? 'nobody')
    if (whose.ball === null && ball !== null) setWhose({ ...whose, ball })
  }
  return (
    <section className="section" aria-label={say('certify-title')}>
      <h2>{say('certify-title')}</h2>
      <p className="quiet">{say('certify-hint')}</p>
      {canWrite && (
        <Choice
          label={say('certify-phone')}
          value={holder ?? ''}
          options={[
            ...group.balls.map(ball => ({ value: ball as string, text: outing.balls.get(ball)?.name ?? ball })),
            { value: '', text: say('certify-nobody') },
          ]}
          onValue={value => hold(value === '' ? null : (value as BallId))}
        />
      )}
      {group.balls.map(ball => (
        <CertifyBall key={ball} outing={outing} ball={ball} holder={canWrite ? holder : null} />
      ))}
      {canWrite && <Markers outing={outing} group={group} whose={whose} onWhose={setWhose} />}
    </section>
  )
}
