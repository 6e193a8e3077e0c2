import { useState } from 'react'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { Choice } from '../../parts/Choice.tsx'
import { cardText } from '../../state/card-giving.ts'
import { say } from '../../words/say-any.ts'
import { GiveText } from '../share/GiveText.tsx'

interface Props {
  readonly outing: Outing
  readonly group: Group
}

/** One player's card for that player's own phone: as codes with no signal, or as a file. */
export function CardHome({ outing, group }: Props) {
  const [chosen, setChosen] = useState<BallId | null>(null)
  const nameOf = (ball: BallId): string => outing.balls.get(ball)?.name ?? ball
  const ball = chosen && group.balls.includes(chosen) ? chosen : null
  const title = ball && [outing.title ?? outing.courseName, say('card-home-name', { player: nameOf(ball) })]
  const text = ball && title && cardText(ball, title.filter(Boolean).join(', '))
  return (
    <section className="section" aria-label={say('card-home-title')}>
      <h2>{say('card-home-title')}</h2>
      <p className="quiet">{say('card-home-hint')}</p>
      <Choice
        label={say('changes-whose')}
        value={ball ?? ''}
        options={group.balls.map(each => ({ value: each, text: nameOf(each) }))}
        onValue={value => setChosen(value as BallId)}
      />
      {ball && !text && <p>{say('no-holes')}</p>}
      {ball && text && (
        <GiveText key={ball} text={text} fileTitle={say('card-home-file')} fileName={`card-${nameOf(ball)}.json`} />
      )}
    </section>
  )
}
