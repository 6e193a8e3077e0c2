import { useState } from 'react'
import { holeKey, type PlayedHole } from '#core/card/score.ts'
import { holesStaying, moveFacts, nextHoleOf } from '#core/outing/acts-move.ts'
import type { Ball, Group, Outing } from '#core/outing/outing.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { Select } from '../../parts/Select.tsx'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { groupsPlaying } from '../../state/own-group.ts'
import { formatHoles } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'

/** One player goes on with another group; what was scored before stays with the group that played it. */
export function MovePlayer({ outing }: { readonly outing: Outing }) {
  const [chosen, setChosen] = useState<BallId | null>(null)
  const balls = [...outing.balls.values()].filter(({ group }) => group !== null && outing.groups.has(group))
  if (groupsPlaying(outing).length < 2) return null
  const ball = balls.find(({ id }) => id === chosen)
  const left = ball && outing.groups.get(ball.group ?? ('' as GroupId))
  return (
    <section className="section" aria-label={say('move-title')}>
      <h2>{say('move-title')}</h2>
      <Select
        label={say('move-who')}
        value={ball?.id ?? ''}
        options={[
          { value: '', text: say('move-nobody') },
          ...balls.map(({ id, name }) => ({ value: id as string, text: name })),
        ]}
        onValue={value => setChosen(value === '' ? null : (value as BallId))}
      />
      {ball && left && (
        <MoveOf key={`${ball.id} ${left.id}`} outing={outing} ball={ball} left={left} onDone={() => setChosen(null)} />
      )}
    </section>
  )
}

interface MoveProps {
  readonly outing: Outing
  readonly ball: Ball
  readonly left: Group
  readonly onDone: () => void
}

function MoveOf({ outing, ball, left, onDone }: MoveProps) {
  const { work } = useWork()
  const order = [...left.round, ...left.extra]
  const others = groupsPlaying(outing).filter(({ id }) => id !== left.id)
  const [chosen, setChosen] = useState<GroupId | null>(null)
  const [started, setStarted] = useState(() => keyOf(nextHoleOf(outing, ball.id, left) ?? order.at(-1) ?? null))
  const to = others.find(({ id }) => id === chosen) ?? others[0]
  const from = order.find(at => holeKey(at) === started)
  if (!to || !from) return null
  const move = (): void =>
    work(async () => {
      await act('player moved', moveFacts(outing, { ball: ball.id, to: to.id, from }))
      onDone()
    })
  return (
    <>
      <Select
        label={say('move-to')}
        value={to.id}
        options={others.map(({ id, name }) => ({ value: id, text: name }))}
        onValue={value => setChosen(value as GroupId)}
      />
      <Select
        label={say('move-from')}
        value={started}
        options={order.map(at => ({ value: holeKey(at), text: holeWords(at) }))}
        onValue={value => setStarted(value as typeof started)}
      />
      <SecondTap
        label={say('move-go', { player: ball.name, group: to.name })}
        sure={say('move-sure')}
        warning={stayingWords(outing, ball, left, from)}
        onSure={move}
      />
    </>
  )
}

const keyOf = (at: PlayedHole | null) => (at === null ? '' : holeKey(at))

const holeWords = ({ hole, lap }: PlayedHole): string => (lap === 1 ? String(hole) : say('move-lap', { hole, lap }))

/** "Alder's holes 1 to 3 stay with Group 1." */
function stayingWords(outing: Outing, ball: Ball, left: Group, from: PlayedHole): string {
  const holes = holesStaying(outing, ball, left, from).map(({ hole }) => hole)
  const fill = { player: ball.name, group: left.name, holes: formatHoles(holes) }
  return say(holes.length === 0 ? 'move-none-stay' : holes.length === 1 ? 'move-one-stays' : 'move-stay', fill)
}
