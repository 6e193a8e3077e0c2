import { useRef, useState } from 'react'
import { hasCamera } from '../../device/code-reader.ts'
import { Field } from '../../parts/Field.tsx'
import { useWork } from '../../parts/use-work.ts'
import { say } from '../../words/say.ts'
import { CodeCamera } from './CodeCamera.tsx'
import { useTakeOver } from './use-take-over.ts'

/** An outing from another phone with no signal: codes read by the camera or from pictures, or a file. */
export function TakeOver() {
  const [name, setName] = useState('')
  const [isLooking, setLooking] = useState(false)
  const { said, read, pick } = useTakeOver(name.trim() || say('nobody'))
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
      <p className="quiet">{say('take-over-hint')}</p>
      <Field label={say('join-name')} value={name} maxLength={40} onValue={setName} hint={say('join-name-hint')} />
      {hasCamera() && (
        <button type="button" className="button" onClick={() => setLooking(!isLooking)}>
          {say(isLooking ? 'take-over-stop' : 'take-over-camera')}
        </button>
      )}
      {isLooking && <CodeCamera onCode={code => void read(code)} />}
      <label className="button">
        {say('take-over-pick')}
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
