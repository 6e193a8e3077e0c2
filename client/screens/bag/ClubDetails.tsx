import { useState } from 'react'
import { partSwingSaid } from '#core/plan/acts.ts'
import { type Club, clubsInBag, isClub, partSwings, wedges } from '#core/plan/clubs.ts'
import type { Plan } from '#core/plan/plan.ts'
import { fire } from '../../parts/fire.ts'
import { Select } from '../../parts/Select.tsx'
import { actOnPlan } from '../../state/player-log.ts'
import { clubName } from '../../words/plan-text.ts'
import { say } from '../../words/say-any.ts'
import { MeasuredShots } from './MeasuredShots.tsx'
import { NumberField } from './NumberField.tsx'
import { SpreadFields } from './SpreadFields.tsx'

/** What can be said of one club beside its number, behind the choice of the club. */
export function ClubDetails({ plan }: { readonly plan: Plan }) {
  const [chosen, setChosen] = useState<Club | null>(null)
  const inBag = clubsInBag(plan)
  const club = chosen !== null && inBag.includes(chosen) ? chosen : null
  return (
    <section className="section" aria-label={say('bag-more')}>
      <h2>{say('bag-more')}</h2>
      <p className="quiet">{say('bag-more-hint')}</p>
      <Select
        label={say('bag-more-club')}
        value={club ?? ''}
        options={[
          { value: '', text: say('bag-choose') },
          ...inBag.map(each => ({ value: each as string, text: clubName(each) })),
        ]}
        onValue={value => setChosen(isClub(value) ? value : null)}
      />
      {club !== null && (
        <div key={club} className="private stack">
          <MeasuredShots plan={plan} club={club} />
          <SpreadFields plan={plan} club={club} />
          {(wedges as readonly Club[]).includes(club) && <PartSwings plan={plan} club={club} />}
        </div>
      )}
    </section>
  )
}

function PartSwings({ plan, club }: { readonly plan: Plan; readonly club: Club }) {
  return (
    <div className="stack">
      <h3>{say('bag-parts')}</h3>
      <div className="in-columns">
        {partSwings.map(part => (
          <NumberField
            key={part}
            label={say('number-in-unit', { number: say(`part-${part}`), unit: say(`unit-${plan.unit}`) })}
            value={plan.parts.get(club)?.get(part) ?? null}
            from={10}
            to={200}
            canBeEmpty
            onNumber={carry =>
              fire(actOnPlan('part swing changed', current => partSwingSaid(current, club, part, carry)))
            }
          />
        ))}
      </div>
    </div>
  )
}
