import { useEffect, useState } from 'react'
import { codesOfText } from '../../state/codes.ts'
import { say } from '../../words/say-any.ts'
import { CodeTurner } from './CodeTurner.tsx'

interface Props {
  readonly text: string
  /** What the file is called, on its button and on the disk. */
  readonly fileTitle: string
  readonly fileName: string
}

/** A text for another phone with no signal: as codes, or as a file. */
export function GiveText({ text, fileTitle, fileName }: Props) {
  const [isShown, setShown] = useState(false)
  return (
    <>
      <div className="pair">
        <button type="button" className="button grow" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
          {say(isShown ? 'hand-over-hide' : 'hand-over-show')}
        </button>
        <FileLink text={text} title={fileTitle} name={fileName} />
      </div>
      {isShown && <CodesOfText text={text} />}
    </>
  )
}

function FileLink({ text, title, name }: { readonly text: string; readonly title: string; readonly name: string }) {
  const [url, setUrl] = useState('')
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
    setUrl(made)
    return () => URL.revokeObjectURL(made)
  }, [text])
  return (
    <a className="button grow" href={url} download={name}>
      {title}
    </a>
  )
}

function CodesOfText({ text }: { readonly text: string }) {
  const [codes, setCodes] = useState<readonly string[] | null>(null)
  useEffect(() => {
    let isWanted = true
    codesOfText(text).then(
      made => isWanted && setCodes(made),
      (reason: unknown) => reportError(reason),
    )
    return () => {
      isWanted = false
    }
  }, [text])
  return codes === null ? <p role="status">{say('working')}</p> : <CodeTurner codes={codes} />
}
