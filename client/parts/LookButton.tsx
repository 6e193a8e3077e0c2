import { useState } from 'react'
import { say } from '../words/say-any.ts'
import { chooseLook, currentLook } from './look-choice.ts'

/** Day or night, whatever the phone prefers. */
export function LookButton() {
  const [look, setLook] = useState(currentLook)
  const other = look === 'day' ? 'night' : 'day'
  const choose = (): void => {
    chooseLook(other)
    setLook(other)
  }
  return (
    <button type="button" className="button" onClick={choose}>
      {say(other === 'night' ? 'by-night' : 'by-day')}
    </button>
  )
}
