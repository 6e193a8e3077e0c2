import { useEffect, useState } from 'react'
import { Redirect, useLocation } from 'wouter'
import { Loading } from '../../parts/Loading.tsx'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { useWork } from '../../parts/use-work.ts'
import { type CodeSight, lookAtCode, takeOwnLog } from '../../state/own-phones.ts'
import { say, sayCode } from '../../words/say-any.ts'
import { paths } from '../paths.ts'
import { OwnPage } from './OwnPage.tsx'

/** Where a player's own code leads: their bag comes onto this phone. The code leaves the address bar at once. */
export function TakeOwnScreen() {
  const [location] = useLocation()
  const [code] = useState(location)
  const [sight, setSight] = useState<CodeSight | 'looking' | null>('looking')
  useEffect(() => {
    // The secret must not stay where a screenshot, a history or a shared address shows it.
    history.replaceState(null, '', `#${paths.own}`)
    lookAtCode(code).then(setSight, (reason: unknown) => reportError(reason))
  }, [code])
  if (sight === 'looking') return <Loading />
  if (sight?.isHere) return <Redirect to={paths.bag} replace />
  return (
    <OwnPage back={{ href: paths.home, text: say('to-home') }}>
      <div>
        <h1>{say('own-take-title')}</h1>
        <p className="quiet">{say('own-take-what')}</p>
      </div>
      {sight === null ? (
        <p role="alert" className="notice">
          {say('own-take-no-code')}
        </p>
      ) : (
        <Take code={code} hadOther={sight.hasOther} />
      )}
    </OwnPage>
  )
}

function Take({ code, hadOther }: { readonly code: string; readonly hadOther: boolean }) {
  const [fault, setFault] = useState<string | null>(null)
  const hasOther = hadOther || fault === 'another bag'
  const [, go] = useLocation()
  const { isWorking, work } = useWork()
  const take = (): void =>
    work(async () => {
      const taken = await takeOwnLog(code, hasOther).catch(() => null)
      if (taken?.ok) go(paths.bag, { replace: true })
      else setFault(taken === null ? 'storage' : taken.error)
    })
  return (
    <>
      {hasOther ? (
        <SecondTap
          label={say('own-take')}
          sure={say('own-take-sure')}
          warning={say('own-take-warning')}
          isDisabled={isWorking}
          onSure={take}
        />
      ) : (
        <button type="button" className="button loud" disabled={isWorking} onClick={take}>
          {say('own-take')}
        </button>
      )}
      {fault !== null && (
        <p role="alert" className="notice">
          {sayCode('own-fault-', fault, 'join-fault-other')}
        </p>
      )}
    </>
  )
}
