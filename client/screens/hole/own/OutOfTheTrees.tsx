import { useState } from 'react'
import type { Plan } from '#core/plan/plan.ts'
import { recoveryClubs, recoverySteps } from '#core/plan/recovery.ts'
import { clubName } from '../../../words/plan-text.ts'
import { say } from '../../../words/say-any.ts'

/** The lowest-lofted club that clears, found by asking about one after the other, and the routine. */
export function OutOfTheTrees({ plan }: { readonly plan: Plan }) {
  /** So many clubs do not clear. */
  const [short, setShort] = useState(0)
  const among = recoveryClubs(plan.bag)
  const found = among[short]
  return (
    <>
      {among.length === 0 && <p>{say('trees-few-clubs')}</p>}
      {found && (
        <>
          <p className="own-figure">{clubName(found.club)}</p>
          <p>{say('trees-clears')}</p>
        </>
      )}
      {among.length > 0 && !found && <p className="own-figure">{say('trees-none')}</p>}
      {among.length > 0 && (
        <button type="button" className="button" onClick={() => setShort(found ? short + 1 : 0)}>
          {say(found ? 'trees-more-loft' : 'trees-first-again')}
        </button>
      )}
      <p className="caution">{say('caution-trees')}</p>
      <ol className="routine">
        {recoverySteps.map(step => (
          <li key={step}>{say(`trees-${step}`)}</li>
        ))}
      </ol>
    </>
  )
}
