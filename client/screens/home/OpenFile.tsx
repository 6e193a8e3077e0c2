import { useState } from 'react'
import { useLocation } from 'wouter'
import type { Fault } from '#core/values/result.ts'
import { Field } from '../../parts/Field.tsx'
import { FilePick } from '../../parts/FilePick.tsx'
import { useWork } from '../../parts/use-work.ts'
import { importFile } from '../../state/files.ts'
import { say } from '../../words/say-any.ts'
import { tabPath } from '../paths.ts'

/** Opens an outing file of either form; the name is asked for as when joining. */
export function OpenFile() {
  const [name, setName] = useState('')
  const [faults, setFaults] = useState<readonly Fault[]>([])
  const { work } = useWork()
  const [, go] = useLocation()
  const open = (text: string): void =>
    work(async () => {
      const opened = await importFile(text, name.trim() || say('nobody'))
      if (opened.ok) go(tabPath(opened.value, 'hole'))
      else setFaults(opened.error)
    })
  return (
    <>
      <Field label={say('join-name')} value={name} maxLength={40} onValue={setName} hint={say('join-name-hint')} />
      <FilePick label={say('home-file-pick')} onText={open} />
      <p className="quiet">{say('home-file-hint')}</p>
      <div role="alert">
        {faults.length > 0 && (
          <div className="notice">
            <p>{say('home-file-bad')}</p>
            <ul>
              {faults.map(({ path, code }) => (
                <li key={path + code}>{`${path} ${code}`.trim()}</li>
              ))}
            </ul>
          </div>
        )}
      </div>
    </>
  )
}
