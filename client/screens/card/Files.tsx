import { useEffect, useState } from 'react'
import { exportFile } from '../../state/files.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'

/** The outing as files, made from what stands on this phone now. */
export function Files() {
  return (
    <section className="section" aria-label={say('files-title')}>
      <h2>{say('files-title')}</h2>
      <FileLink form="whole" />
      <FileLink form="plain" />
      <p className="quiet">{say('files-hint')}</p>
    </section>
  )
}

interface FileHere {
  readonly name: string
  readonly url: string
}

function FileLink({ form }: { readonly form: 'whole' | 'plain' }) {
  const history = useOuting(store => store.history)
  const [file, setFile] = useState<FileHere | null>(null)
  useEffect(() => {
    // Made again whenever an act comes in, so that the link always gives what the page shows.
    if (history.length === 0) return
    const made = exportFile(form)
    if (made === null) return
    const url = URL.createObjectURL(new Blob([made.text], { type: 'application/json' }))
    setFile({ name: made.name, url })
    return () => URL.revokeObjectURL(url)
  }, [form, history])
  if (file === null) return null
  return (
    <a className="button" href={file.url} download={file.name}>
      {say(form === 'whole' ? 'file-whole' : 'file-plain')}
    </a>
  )
}
