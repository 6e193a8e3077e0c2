import { useState } from 'react'
import { Field } from '../../parts/Field.tsx'
import { say } from '../../words/say-any.ts'
import { CodeReader } from './CodeReader.tsx'
import { useTakeOver } from './use-take-over.ts'

/** An outing from another phone with no signal: codes read by the camera or from pictures, or a file. */
export function TakeOver() {
  const [name, setName] = useState('')
  const codes = useTakeOver(name.trim() || say('nobody'))
  return (
    <>
      <p className="quiet">{say('take-over-hint')}</p>
      <Field label={say('join-name')} value={name} maxLength={40} onValue={setName} hint={say('join-name-hint')} />
      <CodeReader codes={codes} label={say('take-over-pick')} />
    </>
  )
}
