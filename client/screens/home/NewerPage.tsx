import { useEffect, useState } from 'react'
import { hasNewVersion, takeNewVersion } from '../../device/worker-registration.ts'
import { fire } from '../../parts/fire.ts'
import { say } from '../../words/say-any.ts'

/** A newer version of the page that waits. Offered between outings alone: nobody is sent away from a hole. */
export function NewerPage() {
  const [hasNewer, setNewer] = useState(false)
  useEffect(() => fire(hasNewVersion().then(setNewer)), [])
  if (!hasNewer) return null
  return (
    <button type="button" className="button" onClick={() => fire(takeNewVersion())}>
      {say('home-newer')}
    </button>
  )
}
