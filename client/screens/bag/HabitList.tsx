import { habitNumberChosen, habitSwitched } from '#core/plan/acts.ts'
import { type Habit, type HabitNumber, habits } from '#core/plan/habits.ts'
import type { Plan } from '#core/plan/plan.ts'
import { fire } from '../../parts/fire.ts'
import { Tick } from '../../parts/Tick.tsx'
import { actOnPlan } from '../../state/player-log.ts'
import { say } from '../../words/say-any.ts'
import { NumberField } from './NumberField.tsx'

const numbersOf: Readonly<Record<Habit, readonly HabitNumber[]>> = {
  middle: ['mid-iron-border'],
  'pin-depth': ['past-front-pin', 'short-of-back-pin'],
  'lay-up': [],
  trees: [],
  'six-threes': [],
}

const rangeOf: Readonly<Record<HabitNumber, { readonly from: number; readonly to: number }>> = {
  'mid-iron-border': { from: 50, to: 250 },
  'past-front-pin': { from: 0, to: 20 },
  'short-of-back-pin': { from: 0, to: 20 },
}

/** The five habits, each on or off, with its numbers. */
export function HabitList({ plan }: { readonly plan: Plan }) {
  return (
    <section className="section" aria-label={say('bag-habits')}>
      <h2>{say('bag-habits')}</h2>
      <ul className="lines private">
        {habits.map(habit => (
          <li key={habit} className="stack">
            <div>
              <Tick
                label={say(`habit-${habit}`)}
                isOn={plan.habits[habit]}
                onChange={isOn => fire(actOnPlan('habit switched', () => habitSwitched(habit, isOn)))}
              />
              <p className="quiet">{say(`habit-${habit}-what`)}</p>
            </div>
            {plan.habits[habit] && numbersOf[habit].length > 0 && (
              <div className="in-columns">
                {numbersOf[habit].map(number => (
                  <HabitField key={number} plan={plan} number={number} />
                ))}
              </div>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

function HabitField({ plan, number }: { readonly plan: Plan; readonly number: HabitNumber }) {
  const choose = (amount: number | null): void => {
    if (amount !== null) fire(actOnPlan('habit changed', current => habitNumberChosen(current, number, amount)))
  }
  const label = say('number-in-unit', { number: say(`number-${number}`), unit: say(`unit-${plan.unit}`) })
  return <NumberField label={label} value={plan.numbers[number]} {...rangeOf[number]} onNumber={choose} />
}
