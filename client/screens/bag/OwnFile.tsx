import { useState } from 'react'
import type { Plan } from '#core/plan/plan.ts'
import { playerFileOf } from '#shared/player-file.ts'
import { FileLink } from '../../parts/FileLink.tsx'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { useWork } from '../../parts/use-work.ts'
import { usePlan } from '../../state/plan-store.ts'
import { removePlan } from '../../state/player-log.ts'
import { say } from '../../words/say-any.ts'

/** The bag in the hands of its owner: as a file to keep, and off this phone for good; nothing where nothing was said. */
export function OwnFile({ plan }: { readonly plan: Plan }) {
  const [outcome, setOutcome] = useState<'removed' | 'failed' | null>(null)
  const isBegun = usePlan(store => store.isBegun)
  const isShared = usePlan(store => store.isShared)
  const { isWorking, work } = useWork()
  const remove = (): void => work(async () => setOutcome((await removePlan()) ? 'removed' : 'failed'))
  if (!isBegun && !isWorking && outcome !== 'removed') return null
  return (
    <section className="section" aria-label={say('bag-own')}>
      <h2>{say('bag-own')}</h2>
      {isBegun && (
        <>
          <FileLink text={fileText(plan)} title={say('bag-file')} name="my-bag.json" />
          <p className="quiet">{say('bag-file-hint')}</p>
          <SecondTap
            label={say('bag-remove')}
            sure={say('bag-remove-sure')}
            warning={say(isShared ? 'bag-remove-warning-shared' : 'bag-remove-warning')}
            isDisabled={isWorking}
            onSure={remove}
          />
        </>
      )}
      {/* Of a bag begun since nothing is said. */}
      <p role="status">{outcome !== null && (outcome === 'failed' || !isBegun) && say(`bag-remove-${outcome}`)}</p>
    </section>
  )
}

const fileText = (plan: Plan): string => `${JSON.stringify(playerFileOf(plan), null, 2)}\n`
