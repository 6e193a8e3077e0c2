import { useState } from 'react'
import { lazyPart } from '../../parts/later.tsx'
import { say } from '../../words/say.ts'
import type { MoreProps } from './more/MoreOnHole.tsx'

// Scoring a hole must not wait for it.
const MoreOnHole = lazyPart(async () => (await import('./more/MoreOnHole.tsx')).MoreOnHole, {
  standIn: <p role="status">{say('loading')}</p>,
  isAskedFor: true,
})

/** One tap away: concessions, agreed results and everything else that is no score. */
export function More(props: Omit<MoreProps, 'results'>) {
  const [isOpen, setOpen] = useState(false)
  return (
    <div className="more-line">
      <button type="button" className="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {say(isOpen ? 'less-on-hole' : 'more-on-hole')}
      </button>
      {isOpen && <MoreOnHole {...props} />}
    </div>
  )
}
