import { useEffect, useState } from 'react'
import { canKeepScreenOn, keepScreenOn } from '../device/screen-wake.ts'
import { say } from '../words/say.ts'

/** Keeps the screen on while this page is looked at, if the phone can. */
export function ScreenOn() {
  const [isWanted, setWanted] = useState(false)
  const [isOn, setOn] = useState(false)
  useEffect(() => (isWanted ? keepScreenOn(setOn) : undefined), [isWanted])
  if (!canKeepScreenOn()) return null
  return (
    <div className="field">
      <button type="button" className="button" aria-pressed={isWanted} onClick={() => setWanted(!isWanted)}>
        {say('screen-on')}
      </button>
      {isWanted && !isOn && <p className="quiet">{say('screen-on-refused')}</p>}
    </div>
  )
}
