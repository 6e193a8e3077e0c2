import { clubPutIn, clubTakenOut } from '#core/plan/acts.ts'
import { enoughNumbers } from '#core/plan/bag.ts'
import { type Club, clubs, clubsInBag, isClub, mostClubs } from '#core/plan/clubs.ts'
import type { Plan } from '#core/plan/plan.ts'
import { fire } from '../../parts/fire.ts'
import { Select } from '../../parts/Select.tsx'
import { actOnPlan } from '../../state/player-log.ts'
import { clubName } from '../../words/plan-text.ts'
import { say } from '../../words/say-any.ts'
import { shotsText } from './MeasuredShots.tsx'
import { NumberField } from './NumberField.tsx'

/** A carry that a number can be before it is typed to its end. */
const shortestCarry = 30
const longestCarry = 400

/** Every club in the bag with its carry; the ones without a number with what they are estimated at. */
export function ClubList({ plan }: { readonly plan: Plan }) {
  const inBag = clubsInBag(plan)
  return (
    <section className="section" aria-label={say('bag-clubs')}>
      <h2>{say('bag-clubs')}</h2>
      <p className="quiet">{say('bag-carry-hint')}</p>
      {plan.said.size === 0 && <p className="quiet">{say('bag-proposed')}</p>}
      <p role="status">{stateOf(plan)}</p>
      <ul className="private">
        {inBag.map(club => (
          <ClubRow key={club} plan={plan} club={club} />
        ))}
      </ul>
      <div className="in-columns">
        <ClubChoice
          label={say('bag-put-in')}
          among={clubs.filter(club => !inBag.includes(club))}
          onClub={club => fire(actOnPlan('club put in', current => clubPutIn(current, club, null)))}
        />
        <ClubChoice
          label={say('bag-take-out')}
          among={inBag}
          onClub={club => fire(actOnPlan('club taken out', current => clubTakenOut(current, club)))}
        />
      </div>
    </section>
  )
}

function stateOf({ said, bag }: Plan): string {
  if (said.size > mostClubs) return say('bag-too-many', { n: said.size })
  const numbers = bag.clubs.filter(({ isEstimated }) => !isEstimated).length
  if (numbers < enoughNumbers) return say('bag-numbers-to-go', { n: enoughNumbers - numbers })
  return numbers < said.size ? say('bag-rest-estimated') : ''
}

/** A club with its carry, typed or estimated. */
export function ClubRow({ plan, club }: { readonly plan: Plan; readonly club: Club }) {
  const found = plan.bag.clubs.find(each => each.club === club)
  return (
    <li className="club-row">
      <span>
        <span aria-hidden="true">{clubName(club)}</span>
        {found?.isEstimated && <span className="quiet">{say('bag-estimated', { n: found.carry })}</span>}
        {plan.measured.has(club) && <span className="quiet">{shotsText(plan, club)}</span>}
      </span>
      <NumberField
        label={say('bag-carry-of', { club: clubName(club) })}
        hasLabel={false}
        value={plan.said.get(club) ?? null}
        from={shortestCarry}
        to={longestCarry}
        canBeEmpty
        onNumber={carry => fire(actOnPlan('carry changed', current => clubPutIn(current, club, carry)))}
      />
    </li>
  )
}

interface ChoiceProps {
  readonly label: string
  readonly among: readonly Club[]
  readonly onClub: (club: Club) => void
}

function ClubChoice({ label, among, onClub }: ChoiceProps) {
  const options = [
    { value: '', text: say('bag-choose') },
    ...among.map(club => ({ value: club as string, text: clubName(club) })),
  ]
  return <Select label={label} value="" options={options} onValue={value => isClub(value) && onClub(value)} />
}
