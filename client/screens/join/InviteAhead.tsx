import { useCallback, useEffect, useState } from 'react'
import { useLocation } from 'wouter'
import type { LogId } from '#core/values/ids.ts'
import type { Result } from '#core/values/result.ts'
import { fire } from '../../parts/fire.ts'
import { besideName, outingName } from '../../parts/outing-name.ts'
import type { JoinFault } from '../../state/invite-meeting.ts'
import { type InviteSight, lookAtInvite } from '../../state/joining.ts'
import { say, sayCode } from '../../words/say-any.ts'
import { tabPath } from '../paths.ts'
import { JoinForm } from './JoinForm.tsx'

interface Props {
  readonly link: string
  readonly onJoined: (log: LogId) => void
}

/** What the invite leads to, then the name. A phone that is in already goes straight there. */
export function InviteAhead({ link, onJoined }: Props) {
  const [sight, setSight] = useState<Result<InviteSight, JoinFault> | null>(null)
  const [, go] = useLocation()
  const look = useCallback(() => {
    setSight(null)
    fire(lookAtInvite(link).then(setSight))
  }, [link])
  useEffect(look, [look])
  const inLog = sight?.ok && sight.value.isIn ? sight.value.log : null
  useEffect(() => {
    if (inLog !== null) go(tabPath(inLog, 'hole'), { replace: true })
  }, [inLog, go])
  if (sight === null || inLog !== null) return <p role="status">{say('join-asking')}</p>
  if (!sight.ok) return <CannotLook fault={sight.error} onAgain={look} />
  return (
    <>
      <Ahead sight={sight.value} />
      <JoinForm link={link} players={sight.value.players} onJoined={onJoined} />
    </>
  )
}

function Ahead({ sight }: { readonly sight: InviteSight }) {
  const rest = besideName(sight)
  return (
    <div>
      <h2>{outingName(sight)}</h2>
      {rest !== '' && <p className="quiet">{rest}</p>}
    </div>
  )
}

function CannotLook({ fault, onAgain }: { readonly fault: JoinFault; readonly onAgain: () => void }) {
  return (
    <>
      <p role="alert" className="notice">
        {sayCode('join-fault-', fault, 'join-fault-other')}
      </p>
      <button type="button" className="button loud" onClick={onAgain}>
        {say('try-again')}
      </button>
    </>
  )
}
