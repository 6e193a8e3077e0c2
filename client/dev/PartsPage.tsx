import { useState } from 'react'
import { holeKey } from '#core/card/score.ts'
import { shotNote } from '#core/plan/shot-note.ts'
import { must } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'
import { Bar } from '../parts/Bar.tsx'
import { Choice } from '../parts/Choice.tsx'
import { Field } from '../parts/Field.tsx'
import { Foot } from '../parts/Foot.tsx'
import { FirstCorner, SecondCorner } from '../parts/LockCorner.tsx'
import { MatchStrip } from '../parts/MatchStrip.tsx'
import { type Mark, outOfPlay } from '../parts/mark.ts'
import { matchLineWords } from '../parts/match-view.ts'
import { SecondTap } from '../parts/SecondTap.tsx'
import { Select } from '../parts/Select.tsx'
import { Strip } from '../parts/Strip.tsx'
import { stripOf, stripWords } from '../parts/strip-view.ts'
import { Tick } from '../parts/Tick.tsx'
import { ClubRow } from '../screens/bag/ClubList.tsx'
import { NumberField } from '../screens/bag/NumberField.tsx'
import { BallRow } from '../screens/hole/BallRow.tsx'
import { HeldScores } from '../screens/hole/HeldScores.tsx'
import { HoleHead } from '../screens/hole/HoleHead.tsx'
import { MoreKeys } from '../screens/hole/MoreKeys.tsx'
import { OutOfTheTrees } from '../screens/hole/own/OutOfTheTrees.tsx'
import { Answer, ShotInHand } from '../screens/hole/own/ShotInHand.tsx'
import { openGuard } from '../screens/hole/score-guard.ts'
import { standingsOnHole } from '../screens/hole/standings.ts'
import { Count } from '../screens/hole/Ticks.tsx'
import { sample, samplePlan } from './sample.ts'

const looks = ['day', 'night'] as const
const at = { hole: 8, lap: 1 }
const nothing = (): void => undefined
const { outing, levels, results } = sample()
const plan = samplePlan()

/** Every part with its states, by day and by night; of the development build alone, so its few words are no catalogue's. */
export function PartsPage() {
  return (
    <div className="looks">
      {looks.map(look => (
        <div key={look} className="look" data-look={look}>
          <h1>By {look}</h1>
          <Marks />
          <Strips />
          <HoleParts />
          <Controls />
          <Words />
          <OwnPlan />
        </div>
      ))}
    </div>
  )
}

const value = (over: number): Mark => ({ kind: 'value', over })

const marks: readonly (readonly [name: string, mark: Mark])[] = [
  ['level', value(0)],
  ['one over', value(1)],
  ['two over', value(2)],
  ['four over', value(4)],
  ['six over', value(6)],
  ['one under', value(-1)],
  ['two under', value(-2)],
  ['picked up', { kind: 'picked-up' }],
  ['two scores', { kind: 'two', halves: [value(1), value(2)] }],
  ['out of play', outOfPlay],
  ['not yet played', { kind: 'open' }],
]

function Marks() {
  return (
    <section>
      <h2>Marks</h2>
      {marks.map(([name, mark]) => (
        <p key={name} className="mark-sample">
          <svg height={52} aria-hidden="true">
            <line className="mark-line" x1="0" x2="100%" y1={30} y2={30} />
            <Bar mark={mark} x={20} width={60} base={30} />
          </svg>
          {name}
        </p>
      ))}
      <h2>Strokes received</h2>
      <p className="ball-strokes">
        {[0, 1, 2, 3, -1].map(count => (
          <Count key={count} count={count} />
        ))}
      </p>
    </section>
  )
}

function Strips() {
  const cards = [...outing.balls.keys()].map(ball => [ball, must(results.cards.get(ball), 'a card a ball')] as const)
  const match = results.games.get('match' as never)
  const line = must(match?.kind === 'match' ? match.matches[0] : undefined, 'the sample has a match')
  return (
    <section>
      <h2>Strips</h2>
      {cards.map(([ball, level]) => (
        <Strip
          key={ball}
          blocks={stripOf(outing, level, ball === 'alder' ? holeKey(at) : null)}
          label={stripWords(ball, level)}
          hasSums={ball === 'alder'}
        />
      ))}
      <MatchStrip line={line} label={matchLineWords(outing, line)} />
    </section>
  )
}

function HoleParts() {
  const group = must([...outing.groups.values()][0], 'the sample has a group')
  const { head } = standingsOnHole(outing, levels, group, group.balls, at)
  return (
    <section>
      <HoleHead outing={outing} at={at} match={head} player={null} />
      {[...outing.balls.keys()].map(ball => (
        <BallRow
          key={ball}
          outing={outing}
          levels={levels}
          ball={ball}
          at={at}
          isYou={ball === 'alder'}
          teesOff=""
          hasHonour={ball === 'birch'}
          isMarked={ball === 'cedar'}
          canScore={true}
          onScore={nothing}
        />
      ))}
      <BallRow
        outing={outing}
        levels={levels}
        ball={'alder' as BallId}
        at={at}
        isYou={true}
        teesOff=""
        hasHonour={false}
        isMarked={false}
        canScore={false}
        onScore={nothing}
      />
      <MoreKeys player="Alder" chosen="picked-up" candidates={[9]} onScore={nothing} onBack={nothing} />
    </section>
  )
}

function Controls() {
  const [text, setText] = useState('Quillmoor')
  const [isOn, setOn] = useState(true)
  const [choice, setChoice] = useState('a')
  const options = ['a', 'b', 'c'].map(each => ({ value: each, text: `Option ${each}` }))
  return (
    <section className="stack">
      <h2>Controls</h2>
      <Field label="Field" value={text} onValue={setText} hint="A hint" />
      <Field label="Field with a fault" value={text} onValue={setText} fault="What is wrong with it" />
      <Select label="Select" value={choice} options={options} onValue={setChoice} />
      <Choice label="Choice" value={choice} options={options} onValue={setChoice} />
      <Tick label="Tick" isOn={isOn} onChange={setOn} />
      <Tick label="Tick at rest" isOn={false} isDisabled onChange={setOn} />
      <button type="button" className="button">
        Button
      </button>
      <button type="button" className="button" disabled>
        Button at rest
      </button>
      <button type="button" className="button" aria-pressed={true}>
        Button pressed
      </button>
      <button type="button" className="button loud">
        Loud button
      </button>
      <SecondTap label="Second tap" sure="Sure" warning="What it does" onSure={nothing} />
    </section>
  )
}

function Words() {
  const held = [{ ball: 'birch' as BallId, score: 5, hole: 2, lap: 1 }]
  return (
    <section className="stack">
      <h2>Said by the page</h2>
      <p className="notice">A notice</p>
      <p className="private">What is private</p>
      <HeldScores guard={{ ...openGuard, held, reason: 'burst' }} outing={outing} inPlay={8} onAnswer={nothing} />
      <HeldScores guard={{ ...openGuard, held, reason: 'other-hole' }} outing={outing} inPlay={8} onAnswer={nothing} />
      <FirstCorner />
      <SecondCorner />
      <Foot />
    </section>
  )
}

function OwnPlan() {
  return (
    <section className="stack">
      <h2>One’s own plan</h2>
      <ul className="private">
        {plan.bag.clubs.map(({ club }) => (
          <ClubRow key={club} plan={plan} club={club} />
        ))}
      </ul>
      <NumberField label="Number" value={100} from={30} to={200} onNumber={nothing} hint="A hint" />
      <div className="private stack">
        <ShotInHand plan={plan} />
      </div>
      {[118, 150, 245].map(distance => (
        <div key={distance} className="private shot-answer">
          <Answer plan={plan} note={shotNote(plan, distance, 'front')} at={distance} />
        </div>
      ))}
      <div className="private shot-answer">
        <OutOfTheTrees plan={plan} />
      </div>
    </section>
  )
}
