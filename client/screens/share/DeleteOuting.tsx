import { useState } from 'react'
import type { Outing } from '#core/outing/outing.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { useWork } from '../../parts/use-work.ts'
import { type DeleteFault, deleteOuting } from '../../state/deleting.ts'
import { isDeletedOnServer } from '../../state/outing-store.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { headWords } from '../finish/result-text.ts'
import { useIsOut } from './TakenOut.tsx'

/** The desk deletes the outing from the server; the question names it. */
export function DeleteOuting({ outing }: { readonly outing: Outing }) {
  const isDesk = useOuting(store => store.me?.role === 'desk')
  const isDeleted = useOuting(isDeletedOnServer)
  const isOut = useIsOut()
  const [came, setCame] = useState<DeleteFault | 'done' | null>(null)
  const { isWorking, work } = useWork()
  if (!isDesk || isOut || (isDeleted && came !== 'done')) return null
  const remove = (): void => work(async () => setCame((await deleteOuting()) ?? 'done'))
  return (
    <section className="section" aria-label={say('delete-title')}>
      <h2>{say('delete-title')}</h2>
      {came !== 'done' && (
        <>
          <p className="quiet">{say('delete-hint')}</p>
          <SecondTap
            label={say('delete-go')}
            sure={say('delete-sure')}
            warning={say('delete-warning', { outing: headWords(outing), n: outing.players.size })}
            isDisabled={isWorking}
            onSure={remove}
          />
        </>
      )}
      {came === 'done' && <p role="status">{say('delete-done')}</p>}
      {came !== null && came !== 'done' && <p role="alert">{say(`delete-fault-${came}`)}</p>}
    </section>
  )
}
