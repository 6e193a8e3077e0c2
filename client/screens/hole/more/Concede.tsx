import { useState } from 'react'
import { holeKey } from '#core/card/score.ts'
import { type ConcededThing, concededThings } from '#core/formats/rulings/concession.ts'
import type { NewFact } from '#core/outing/acts.ts'
import { concedeHoleFacts, concedeMatchFacts, concedeStrokeFacts, rulingOnConcession } from '#core/outing/acts-match.ts'
import type { BallId } from '#core/values/ids.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { Field } from '../../../parts/Field.tsx'
import { SecondTap } from '../../../parts/SecondTap.tsx'
import { sideName } from '../../../parts/side-name.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import { faultOfNumber } from '../../games/game-faults.ts'
import type { MatchProps } from './MatchMore.tsx'

/** A stroke, a hole or a match given to the other side. It takes a second tap, for it is final. */
export function Concede(props: MatchProps) {
  const { outing, results, game, sides, at } = props
  const [side, setSide] = useState(0)
  const [what, setWhat] = useState<ConcededThing>('hole')
  const given = sides[side === 0 ? 1 : 0]
  const [chosenBall, setBall] = useState<BallId | null>(null)
  const ball = given.find(each => each === chosenBall) ?? given[0]
  const level = ball && results.cards.get(ball)?.levels.get(holeKey(at))
  const [typed, setScore] = useState<string | null>(null)
  const score = typed ?? String(level ?? 4)
  const { work } = useWork()
  const by = sides[side === 0 ? 0 : 1][0]
  if (!by || !ball) return null
  const to = props.isOneOfSeveral ? (given[0] ?? null) : null
  const said = { game: game.id, by, to }
  const ruling = rulingOnConcession(results, what, { ...said, at: what === 'match' ? null : at })
  const player = outing.balls.get(ball)?.name ?? ball
  const fault = what === 'stroke' && faultOfNumber('', say('concede-score', { player }), score, 1, 30)[0]?.text
  const fill = {
    side: sideName(outing, sides[side === 0 ? 0 : 1]),
    other: sideName(outing, given),
    player,
    score,
    hole: at.hole,
  }
  const factsOf: Record<ConcededThing, () => NewFact[]> = {
    stroke: () => concedeStrokeFacts(outing, results, { game: game.id, ball, ...at, score: Number(score) }),
    hole: () => concedeHoleFacts(outing, results, { ...said, ...at }),
    match: () => concedeMatchFacts(outing, results, said),
  }
  return (
    <section className="section" aria-label={say('concede-title')}>
      <h2>{say('concede-title')}</h2>
      <Choice
        label={say('concede-who')}
        value={String(side)}
        options={sides.map((each, place) => ({ value: String(place), text: sideName(outing, each) }))}
        onValue={value => setSide(Number(value))}
      />
      <Choice
        label={say('concede-what')}
        value={what}
        options={concededThings.map(each => ({ value: each, text: say(`concede-${each}`) }))}
        onValue={value => setWhat(concededThings.find(each => each === value) ?? 'hole')}
      />
      {what === 'stroke' && given.length > 1 && (
        <Choice
          label={say('concede-ball')}
          value={ball}
          options={given.map(each => ({ value: each, text: outing.balls.get(each)?.name ?? each }))}
          onValue={value => setBall(value as BallId)}
        />
      )}
      {what === 'stroke' && (
        <Field
          label={say('concede-score', { player })}
          inputMode="numeric"
          value={score}
          onValue={setScore}
          fault={fault || undefined}
        />
      )}
      {ruling.isValid ? (
        <SecondTap
          key={`${side} ${what} ${ball}`}
          label={say(`concede-${what}-do`, fill)}
          sure={say('concede-sure')}
          warning={say('concede-final')}
          isDisabled={Boolean(fault)}
          onSure={() => work(() => act(`${what} conceded`, factsOf[what]()))}
        />
      ) : (
        <p>{say(`concede-void-${ruling.reason}`)}</p>
      )}
    </section>
  )
}
