import { type FormEvent, useRef, useState } from 'react'
import { shotMeasured } from '#core/plan/acts.ts'
import type { Club } from '#core/plan/clubs.ts'
import { spreadOfShots } from '#core/plan/own-shots.ts'
import type { Plan } from '#core/plan/plan.ts'
import { createId } from '../../device/random-ids.ts'
import { Field } from '../../parts/Field.tsx'
import { useWork } from '../../parts/use-work.ts'
import { actOnPlan } from '../../state/player-log.ts'
import { clubName } from '../../words/plan-text.ts'
import { say } from '../../words/say-any.ts'

/** A carry that somebody measures, in whole units. */
const shortestShot = 5
const longestShot = 450

interface Props {
  readonly plan: Plan
  readonly club: Club
}

/** Single carries, put in one after the other with the keypad open; what they come to is said below. */
export function MeasuredShots({ plan, club }: Props) {
  const [typed, setTyped] = useState('')
  const [isWrong, setWrong] = useState(false)
  const field = useRef<HTMLFormElement>(null)
  const { isWorking, work } = useWork()
  const shots = [...(plan.shots.get(club) ?? [])].sort(([, a], [, b]) => a - b)
  const put = (event: FormEvent): void => {
    event.preventDefault()
    const carry = /^\d{1,3}$/.test(typed.trim()) ? Number(typed) : -1
    const isRight = carry >= shortestShot && carry <= longestShot
    setWrong(!isRight)
    if (!isRight) return
    setTyped('')
    field.current?.querySelector('input')?.focus()
    work(() => actOnPlan('shot measured', current => shotMeasured(current, club, createId(8), carry)))
  }
  return (
    <div className="stack">
      <h3>{say('bag-shots', { club: clubName(club) })}</h3>
      <form ref={field} className="pair shot-in" onSubmit={put}>
        <Field
          label={say('number-in-unit', { number: say('bag-shot'), unit: say(`unit-${plan.unit}`) })}
          inputMode="numeric"
          maxLength={3}
          value={typed}
          onValue={setTyped}
          fault={isWrong ? say('bag-carry-range', { from: shortestShot, to: longestShot }) : undefined}
        />
        <button type="submit" className="button" disabled={isWorking}>
          {say('bag-shot-put')}
        </button>
      </form>
      {shots.length > 0 && (
        <ul className="choices">
          {shots.map(([shot, carry]) => (
            <li key={shot}>
              <button
                type="button"
                className="button"
                aria-label={say('bag-shot-away', { n: carry })}
                onClick={() => work(() => actOnPlan('shot taken away', now => shotMeasured(now, club, shot, null)))}
              >
                {carry}
                <span aria-hidden="true" className="shot-away">
                  ×
                </span>
              </button>
            </li>
          ))}
        </ul>
      )}
      <p role="status">{shotsText(plan, club)}</p>
    </div>
  )
}

/** "3 shots: mean 145, spread 5. Used: 144." Empty where nothing was measured. */
export function shotsText({ measured, bag }: Plan, club: Club): string {
  const found = measured.get(club)
  const used = bag.clubs.find(each => each.club === club)?.carry
  if (found === undefined || used === undefined) return ''
  const spread = spreadOfShots(found)
  const fill = { n: found.shots, mean: Math.round(found.mean), used }
  return spread === null ? say('bag-shots-one', fill) : say('bag-shots-are', { ...fill, spread: Math.round(spread) })
}
