import { useEffect } from 'react'
import { Link } from 'wouter'
import { favouriteChosen, unitChosen } from '#core/plan/acts.ts'
import type { Plan } from '#core/plan/plan.ts'
import { lengthUnits } from '#core/values/length.ts'
import { Choice } from '../../parts/Choice.tsx'
import { fire } from '../../parts/fire.ts'
import { Loading } from '../../parts/Loading.tsx'
import { usePlan } from '../../state/plan-store.ts'
import { actOnPlan, openPlan, retryPlan, undoOnPlan } from '../../state/player-log.ts'
import { say } from '../../words/say.ts'
import { paths } from '../paths.ts'
import { ClubList } from './ClubList.tsx'
import { HabitList } from './HabitList.tsx'
import { NumberField } from './NumberField.tsx'

/** The player's bag, lay-up number and habits. `back` is the plan that the player came from; the outings without one. */
export function BagScreen({ back = null }: { readonly back?: string | null }) {
  const { phase, plan } = usePlan(store => store)
  useEffect(() => fire(openPlan()), [])
  if (!plan) return <Loading />
  return (
    <div className="page">
      <main>
        <div>
          <h1>{say('bag-title')}</h1>
          <p className="quiet">{say('bag-what')}</p>
        </div>
        {phase === 'open' ? <Bag plan={plan} /> : <NoStorage />}
        <Link className="button" href={back ?? paths.home}>
          {say(back === null ? 'to-home' : 'bag-to-plan')}
        </Link>
      </main>
      <div className="bottom">
        <BagFoot />
      </div>
    </div>
  )
}

function Bag({ plan }: { readonly plan: Plan }) {
  const undoable = usePlan(store => store.undoable)
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
      <ClubList plan={plan} />
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
      {undoable !== null && (
        <button type="button" className="button" onClick={() => fire(undoOnPlan())}>
          {say('bag-undo')}
        </button>
      )}
    </>
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

/** Where the bag is: on this phone, and nowhere else. */
function BagFoot() {
  const phone = usePlan(store => store.phone)
  return (
    <div className="foot">
      <div className="foot-words" role="status" aria-live="polite">
        <span className={phone === 'saved' ? 'foot-word' : 'foot-word open'}>
          {say(phone === 'saved' ? 'foot-phone' : `foot-${phone}`)}
        </span>
        <span>{say('bag-foot-alone')}</span>
      </div>
    </div>
  )
}
