import { markerFacts } from '#core/outing/acts-ball.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId, PlayerId } from '#core/values/ids.ts'
import { Select } from '../../parts/Select.tsx'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { say } from '../../words/say-any.ts'
import type { Whose } from '../hole/whose-scores.ts'

interface Props {
  readonly outing: Outing
  readonly group: Group
  readonly whose: Whose
  readonly onWhose: (whose: Whose) => void
}

/** Who marks whom, and whose marker's record this phone keeps; friends who need none leave it closed. */
export function Markers({ outing, group, whose, onWhose }: Props) {
  const { work } = useWork()
  const nameOf = (ball: BallId): string => outing.balls.get(ball)?.name ?? ball
  const others = group.balls.filter(ball => ball !== whose.ball)
  const marks = whose.marks !== null && others.includes(whose.marks) ? whose.marks : null
  const mark = (ball: BallId | null): void => {
    onWhose({ ...whose, marks: ball })
    const own = whose.ball && outing.balls.get(whose.ball)?.players[0]
    // Whose record it is: the marker's name goes with it, where this phone is somebody's.
    if (ball && own) work(() => act('marker named', markerFacts(outing, ball, own)))
  }
  return (
    <details>
      <summary>{say('certify-markers')}</summary>
      <div className="stack">
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
        {group.balls.map(ball => (
          <MarkerChoice key={ball} outing={outing} group={group} ball={ball} />
        ))}
      </div>
    </details>
  )
}

function MarkerChoice({ outing, group, ball }: Pick<Props, 'outing' | 'group'> & { readonly ball: BallId }) {
  const { work } = useWork()
  const others = group.balls.filter(other => other !== ball).flatMap(other => outing.balls.get(other)?.players ?? [])
  return (
    <Select
      label={say('certify-marker-of', { player: outing.balls.get(ball)?.name ?? ball })}
      value={outing.notes.markers.get(ball) ?? ''}
      options={[
        { value: '', text: say('certify-no-marker') },
        ...others.map(player => ({ value: player as string, text: outing.players.get(player)?.name ?? player })),
      ]}
      onValue={value =>
        work(() => act('marker named', markerFacts(outing, ball, value === '' ? null : (value as PlayerId))))
      }
    />
  )
}
