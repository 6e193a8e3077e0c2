import { useEffect, useRef, useState } from 'react'
import { say } from '../words/say-any.ts'

interface Props {
  readonly label: string
  /** What the second tap says that it does. */
  readonly sure: string
  readonly warning: string
  readonly isDisabled?: boolean
  readonly onSure: () => void
}

/** A button that asks once more before it acts. */
export function SecondTap({ label, sure, warning, isDisabled = false, onSure }: Props) {
  const [isAsked, setAsked] = useState(false)
  const yes = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    // The question takes the finger's and the reader's place.
    if (isAsked) yes.current?.focus()
  }, [isAsked])
  if (!isAsked || isDisabled) {
    return (
      <button type="button" className="button" disabled={isDisabled} onClick={() => setAsked(true)}>
        {label}
      </button>
    )
  }
  return (
    <div className="notice stack">
      <p>{warning}</p>
      <div className="choices">
        <button
          ref={yes}
          type="button"
          className="button"
          onClick={() => {
            setAsked(false)
            onSure()
          }}
        >
          {sure}
        </button>
        <button type="button" className="button" onClick={() => setAsked(false)}>
          {say('not-now')}
        </button>
      </div>
    </div>
  )
}
