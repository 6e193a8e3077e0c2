import { useState } from 'react'
import { type Approach, type Pin, pins } from '#core/plan/approach.ts'
import type { Plan } from '#core/plan/plan.ts'
import { type ShotNote, shotNote } from '#core/plan/shot-note.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { Field } from '../../../parts/Field.tsx'
import { sentencesOfLayUp, swingOfLayUp, swingText } from '../../../words/plan-text.ts'
import { say } from '../../../words/say-any.ts'
import { OutOfTheTrees } from './OutOfTheTrees.tsx'

/** A distance that a shot can have. */
const distanceOf = (text: string): number | null => (/^[1-9]\d{0,2}$/.test(text.trim()) ? Number(text) : null)

/** Of a practice round alone: a distance and a pin, and one answer. Nothing of it is kept. */
export function ShotInHand({ plan }: { readonly plan: Plan }) {
  const [text, setText] = useState('')
  const [pin, setPin] = useState<Pin | 'trees'>('middle')
  const distance = distanceOf(text)
  const places = plan.habits.trees ? ([...pins, 'trees'] as const) : pins
  return (
    <>
      <Field
        label={say('shot-distance', { unit: say(`unit-${plan.unit}`) })}
        hint={plan.habits.middle ? say('shot-distance-hint', { border: plan.numbers['mid-iron-border'] }) : undefined}
        inputMode="numeric"
        maxLength={3}
        value={text}
        onValue={setText}
      />
      <Choice
        label={say('shot-pin')}
        value={pin}
        options={places.map(value => ({ value, text: say(`pin-${value}`) }))}
        onValue={value => setPin(places.find(place => place === value) ?? 'middle')}
      />
      <div className="shot-answer" role="status">
        {pin === 'trees' && <OutOfTheTrees plan={plan} />}
        {pin !== 'trees' && distance === null && <p className="quiet">{say('shot-ask')}</p>}
        {pin !== 'trees' && distance !== null && (
          <Answer plan={plan} note={shotNote(plan, distance, pin)} at={distance} />
        )}
      </div>
      {pin !== 'trees' && <p className="caution">{say('caution-people')}</p>}
    </>
  )
}

interface AnswerProps {
  readonly plan: Plan
  readonly note: ShotNote
  /** The distance that was put in. */
  readonly at: number
}

/** One answer: the figure or the word first, then why, then the club. */
export function Answer({ plan, note, at }: AnswerProps) {
  if (note.kind === 'green') return <ToTheGreen plan={plan} approach={note.approach} />
  const { layUp } = note
  if (layUp?.kind !== 'to-favourite') {
    return (
      <>
        <p>{say('shot-out', { n: at })}</p>
        {layUp && sentencesOfLayUp(layUp).map(line => <p key={line}>{line}</p>)}
      </>
    )
  }
  return (
    <>
      <p className="own-figure">{say('lay-up-shot', { shot: layUp.shot })}</p>
      <p>{say('lay-up-leaves', { leaves: layUp.favourite })}</p>
      {layUp.swing && <p>{swingOfLayUp(layUp.swing, layUp)}</p>}
      <p className="quiet">{say('shot-out', { n: at })}</p>
    </>
  )
}

function ToTheGreen({ plan, approach }: { readonly plan: Plan; readonly approach: Approach }) {
  const { aim, plays, swing } = approach
  return (
    <>
      <p className="own-figure">{aim === 'middle' ? say('shot-middle') : plays}</p>
      <p>{whyOf(plan, aim)}</p>
      <p>{swing ? swingText(swing) : say('shot-few-clubs')}</p>
    </>
  )
}

function whyOf({ numbers }: Plan, aim: Approach['aim']): string {
  switch (aim) {
    case 'middle':
      return say('shot-middle-why')
    case 'past':
      return say('shot-past', { n: numbers['past-front-pin'] })
    case 'short':
      return say('shot-short', { n: numbers['short-of-back-pin'] })
    case 'number':
      return say('shot-number')
  }
}
