import { canSleep } from '../../device/worker-registration.ts'
import { say } from '../../words/say-any.ts'
import { useInstall } from './use-install.ts'

/** What this page can do with no signal, said as it is. */
export function PageNotice() {
  const { isInstalled, install } = useInstall()
  if (!window.isSecureContext) return <p className="notice">{say('home-plain-http')}</p>
  return (
    <>
      <p>{say(canSleep() ? 'home-can-sleep' : 'home-cannot-sleep')}</p>
      {isInstalled && <p>{say('home-installed')}</p>}
      {install && !isInstalled && (
        <button type="button" className="button" onClick={install}>
          {say('home-install')}
        </button>
      )}
    </>
  )
}
