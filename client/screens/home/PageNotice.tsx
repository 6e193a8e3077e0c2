import { useEffect, useState } from 'react'
import { canSleep, hasNewVersion, takeNewVersion } from '../../device/worker-registration.ts'
import { fire } from '../../parts/fire.ts'
import { say } from '../../words/say.ts'
import { useInstall } from './use-install.ts'

/** What this page can do with no signal, said as it is. */
export function PageNotice() {
  const { isInstalled, install } = useInstall()
  const [hasNewer, setNewer] = useState(false)
  useEffect(() => fire(hasNewVersion().then(setNewer)), [])
  if (!window.isSecureContext) return <p className="notice">{say('home-plain-http')}</p>
  return (
    <>
      <p>{say(canSleep() ? 'home-can-sleep' : 'home-cannot-sleep')}</p>
      {hasNewer && (
        <button type="button" className="button" onClick={() => fire(takeNewVersion())}>
          {say('home-newer')}
        </button>
      )}
      {isInstalled && <p>{say('home-installed')}</p>}
      {install && !isInstalled && (
        <button type="button" className="button" onClick={install}>
          {say('home-install')}
        </button>
      )}
    </>
  )
}
