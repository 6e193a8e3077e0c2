import { useRef, useState } from 'react'
import { copyText } from '../../device/sharing.ts'
import { say } from '../../words/say-any.ts'
import { QrCode } from './QrCode.tsx'
import { SendLink } from './SendLink.tsx'

interface Props {
  readonly link: string
  /** What the link is called, and its code. */
  readonly title: string
  readonly codeTitle: string
}

/** A link as text to copy or send, and as a QR code. */
export function LinkAsCode({ link, title, codeTitle }: Props) {
  const [said, setSaid] = useState('')
  const field = useRef<HTMLInputElement>(null)
  const copy = async (): Promise<void> => {
    field.current?.select()
    // On plain http the browser has no clipboard for pages; the link stays selected.
    const isCopied = await copyText(link)
    setSaid(say(isCopied ? 'share-copied' : 'share-select'))
  }
  return (
    <>
      <label className="field">
        {title}
        <input ref={field} readOnly value={link} onFocus={event => event.target.select()} />
      </label>
      <div className="pair">
        <button type="button" className="button grow" onClick={() => void copy()}>
          {say('share-copy')}
        </button>
        <SendLink link={link} />
      </div>
      <p role="status">{said}</p>
      <QrCode text={link} label={codeTitle} />
    </>
  )
}
