import { spreadSaid } from '#core/plan/acts.ts'
import type { Club } from '#core/plan/clubs.ts'
import type { Plan } from '#core/plan/plan.ts'
import { priors } from '#core/plan/spread/own-figures.ts'
import { fire } from '../../parts/fire.ts'
import { actOnPlan } from '../../state/player-log.ts'
import { say } from '../../words/say-any.ts'
import { NumberField } from './NumberField.tsx'

interface Props {
  readonly plan: Plan
  readonly club: Club
}

/** A spread that the player knows already, about the number in the bag; without a number there is nothing to spread. */
export function SpreadFields({ plan, club }: Props) {
  const said = plan.spreads.get(club) ?? null
  const hasNumber = (plan.said.get(club) ?? null) !== null
  if (!hasNumber && said === null) return <p className="quiet">{say('bag-spread-no-number')}</p>
  const put = (spread: number | null, shots: number): void =>
    fire(actOnPlan('spread changed', now => spreadSaid(now, club, spread === null ? null : { spread, shots })))
  // Until the player counts, a typed spread weighs as much as the usual one.
  const shots = said?.shots ?? priors.spreadShots
  return (
    <div className="stack">
      <h3>{say('bag-spread')}</h3>
      <p className="quiet">{say('bag-spread-hint')}</p>
      <div className="in-columns">
        <NumberField
          label={say('number-in-unit', { number: say('bag-spread-either'), unit: say(`unit-${plan.unit}`) })}
          value={said?.spread ?? null}
          from={1}
          to={99}
          canBeEmpty
          onNumber={spread => put(spread, shots)}
        />
        {said !== null && (
          <NumberField
            label={say('bag-spread-shots')}
            value={shots}
            from={2}
            to={999}
            onNumber={count => put(said.spread, count ?? shots)}
          />
        )}
      </div>
    </div>
  )
}
