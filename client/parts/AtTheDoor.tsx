import { useState } from 'react'
import { letIn, notNow } from '../state/letting-in.ts'
import { useOuting } from '../state/use-outing.ts'
import type { AtTheDoor as Asker } from '../sync/at-the-door.ts'
import { say, sayCode } from '../words/say-any.ts'
import { useWork } from './use-work.ts'

/** Those who have said three words, each with the one tap that lets them in. */
export function AtTheDoor() {
  const askers = useOuting(({ foot }) => foot.askers)
  return askers.map(asker => <AskerItem key={asker.asker} asker={asker} />)
}

function AskerItem({ asker }: { readonly asker: Asker }) {
  const line = useOuting(({ outing }) => {
    const { name, group } = asker
    if ((outing?.groups.size ?? 0) < 2) return say('asker-asks', { name })
    if (group === null) return say('asker-asks-desk', { name })
    return say('asker-asks-group', { name, group: outing?.groups.get(group)?.name ?? group })
  })
  const [fault, setFault] = useState('')
  const { isWorking, work } = useWork()
  const { name } = asker
  const admit = (): void =>
    work(async () => {
      const why = await letIn(asker)
      setFault(why ? sayCode('asker-fault-', why, 'asker-fault-no server') : '')
    })
  return (
    <div className="foot-item asker">
      <p>{line}</p>
      {fault && <p role="alert">{fault}</p>}
      <div className="pair">
        <button
          type="button"
          className="button loud grow"
          aria-label={say('asker-in-name', { name })}
          disabled={isWorking}
          onClick={admit}
        >
          {say(isWorking ? 'working' : 'asker-in')}
        </button>
        <button
          type="button"
          className="button grow"
          aria-label={say('asker-not-now-name', { name })}
          disabled={isWorking}
          onClick={() => work(() => notNow(asker))}
        >
          {say('not-now')}
        </button>
      </div>
    </div>
  )
}
