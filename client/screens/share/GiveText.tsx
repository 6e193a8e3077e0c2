import { useCallback, useState } from 'react'
import { FileLink } from '../../parts/FileLink.tsx'
import { useAnswer } from '../../parts/use-answer.ts'
import { codesOfText } from '../../state/codes.ts'
import { say } from '../../words/say-any.ts'
import { CodeTurner } from './CodeTurner.tsx'

interface Props {
  readonly text: string
  /** What the file is called, on its button and on the disk. */
  readonly fileTitle: string
  readonly fileName: string
  /** What the codes hold where the whole text takes more than one, and a word on what they leave out. */
  readonly shorter?: { readonly text: string; readonly note: string } | undefined
}

/** A text for another phone with no signal: as codes, or as a file. */
export function GiveText({ text, fileTitle, fileName, shorter }: Props) {
  const [isShown, setShown] = useState(false)
  return (
    <>
      <div className="pair">
        <button type="button" className="button grow" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
          {say(isShown ? 'hand-over-hide' : 'hand-over-show')}
        </button>
        <FileLink text={text} title={fileTitle} name={fileName} className="button grow" />
      </div>
      {isShown && <CodesOfText text={text} shorter={shorter} />}
    </>
  )
}

function CodesOfText({ text, shorter }: Pick<Props, 'text' | 'shorter'>) {
  const short = shorter?.text
  const made = useAnswer(useCallback(() => fewCodes(text, short), [text, short]))
  if (made === null) return <p role="status">{say('working')}</p>
  return (
    <>
      {made.isShort && shorter && <p className="quiet">{shorter.note}</p>}
      <CodeTurner codes={made.codes} />
    </>
  )
}

async function fewCodes(text: string, short: string | undefined) {
  const codes = await codesOfText(text)
  if (codes.length <= 1 || short === undefined) return { codes, isShort: false }
  return { codes: await codesOfText(short), isShort: true }
}
