import { canThrow } from '#core/outing/acts-roll-up.ts'
import type { Outing } from '#core/outing/outing.ts'
import { createId, thrownUp } from '../../device/random-ids.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { say } from '../../words/say-any.ts'
import { startHoleOf, thrownFacts } from './roll-up-acts.ts'

/** Every ball up in the air, and groups as they come down; until somebody has scored. */
export function ThrowBalls({ outing }: { readonly outing: Outing }) {
  const { work } = useWork()
  const balls = [...outing.balls.keys()]
  if (balls.length < 5) return null
  if (!canThrow(outing)) return <p className="quiet">{say('groups-throw-late')}</p>
  const throwAll = (): void =>
    work(() => act('balls thrown', thrownFacts(outing, balls, startHoleOf(outing), { createId, thrown: thrownUp })))
  return (
    <SecondTap
      label={say('groups-throw')}
      sure={say('groups-throw-sure')}
      warning={say('groups-throw-hint')}
      onSure={throwAll}
    />
  )
}
