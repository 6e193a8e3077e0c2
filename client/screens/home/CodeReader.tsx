import { useRef, useState } from 'react'
import { hasCamera } from '../../device/code-reader.ts'
import { useWork } from '../../parts/use-work.ts'
import { say } from '../../words/say-any.ts'
import { CodeCamera } from './CodeCamera.tsx'
import type { Codes } from './use-codes.ts'

interface Props {
  readonly codes: Codes
  /** What the button for pictures and files says. */
  readonly label: string
}

/** Codes by the camera or from pictures, or a file in their place. */
export function CodeReader({ codes: { said, read, pick }, label }: Props) {
  const [isLooking, setLooking] = useState(false)
  const { work } = useWork()
  const input = useRef<HTMLInputElement>(null)
  const picked = (files: FileList | null): void => {
    const chosen = [...(files ?? [])]
    // The same pictures can be taken again.
    if (input.current) input.current.value = ''
    work(() => pick(chosen))
  }
  return (
    <>
      {hasCamera() && (
        <button type="button" className="button" onClick={() => setLooking(!isLooking)}>
          {say(isLooking ? 'take-over-stop' : 'take-over-camera')}
        </button>
      )}
      {isLooking && <CodeCamera onCode={code => void read(code)} />}
      <label className="button">
        {label}
        <input
          ref={input}
          className="hidden"
          type="file"
          multiple
          accept="image/*,.json,application/json"
          onChange={event => picked(event.target.files)}
        />
      </label>
      <p role="status">{said}</p>
    </>
  )
}
