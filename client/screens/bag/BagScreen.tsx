import { useEffect } from 'react'
import { favouriteChosen, strikeChosen, unitChosen } from '#core/plan/acts.ts'
import { strikes } from '#core/plan/facts.ts'
import type { Plan } from '#core/plan/plan.ts'
import { lengthUnits } from '#core/values/length.ts'
import { Choice } from '../../parts/Choice.tsx'
import { fire } from '../../parts/fire.ts'
import { Loading } from '../../parts/Loading.tsx'
import { lazyPart } from '../../parts/later.tsx'
import { usePlan } from '../../state/plan-store.ts'
import { actOnPlan, openPlan, retryPlan, undoOnPlan } from '../../state/player-log.ts'
import { say } from '../../words/say-any.ts'
import { paths } from '../paths.ts'
import { ClubDetails } from './ClubDetails.tsx'
import { ClubList } from './ClubList.tsx'
import { HabitList } from './HabitList.tsx'
import { NumberField } from './NumberField.tsx'
import { OtherPhones } from './OtherPhones.tsx'
import { OwnFile } from './OwnFile.tsx'
import { OwnPage } from './OwnPage.tsx'

const NumbersSay = lazyPart(async () => (await import('./NumbersSay.tsx')).NumbersSay)

/** The player's bag, lay-up number and habits. `back` is the plan that the player came from; the outings without one. */
export function BagScreen({ back = null }: { readonly back?: string | null }) {
  const { phase, plan, isShared } = usePlan(store => store)
  useEffect(() => fire(openPlan()), [])
  if (!plan) return <Loading />
  return (
    <OwnPage
      beside={phase === 'open' && <UndoChange />}
      back={{ href: back ?? paths.home, text: say(back === null ? 'to-home' : 'bag-to-plan') }}
    >
      <div>
        <h1>{say('bag-title')}</h1>
        <p className="quiet">{say(isShared ? 'bag-what-shared' : 'bag-what')}</p>
      </div>
      {phase === 'open' ? <Bag plan={plan} /> : <NoStorage />}
    </OwnPage>
  )
}

function Bag({ plan }: { readonly plan: Plan }) {
  return (
    <>
      <Choice
        label={say('bag-unit')}
        value={plan.unit}
        options={lengthUnits.map(unit => ({ value: unit, text: say(`unit-${unit}`) }))}
        onValue={value => {
          const unit = lengthUnits.find(each => each === value)
          if (unit) fire(actOnPlan('unit chosen', () => unitChosen(unit)))
        }}
      />
      <Choice
        label={say('bag-strike')}
        value={plan.strike}
        options={strikes.map(strike => ({ value: strike, text: say(`strike-${strike}`) }))}
        onValue={value => {
          const strike = strikes.find(each => each === value)
          if (strike) fire(actOnPlan('strike chosen', () => strikeChosen(strike)))
        }}
      />
      <ClubList plan={plan} />
      <ClubDetails plan={plan} />
      <div className="beside">
        <section className="section" aria-label={say('bag-favourite')}>
          <div className="private">
            <NumberField
              label={say('number-in-unit', { number: say('bag-favourite'), unit: say(`unit-${plan.unit}`) })}
              hint={say('bag-favourite-hint')}
              value={plan.favourite}
              from={30}
              to={200}
              canBeEmpty
              onNumber={amount => fire(actOnPlan('lay-up number changed', current => favouriteChosen(current, amount)))}
            />
          </div>
        </section>
        <HabitList plan={plan} />
      </div>
      <NumbersSay plan={plan} />
      <OtherPhones />
      <OwnFile plan={plan} />
    </>
  )
}

function UndoChange() {
  const isThere = usePlan(store => store.undoable !== null)
  return (
    <button type="button" className="button" disabled={!isThere} onClick={() => fire(undoOnPlan())}>
      {say('bag-undo')}
    </button>
  )
}

function NoStorage() {
  return (
    <div className="notice stack">
      <p>{say('bag-no-storage')}</p>
      <button type="button" className="button" onClick={() => fire(retryPlan())}>
        {say('foot-retry')}
      </button>
    </div>
  )
}
