import { fire } from '../../parts/fire.ts'
import { useCopying } from '../../parts/use-copying.ts'
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
  const { field, copy, said } = useCopying<HTMLInputElement>(link, say('share-select'))
  return (
    <>
      <label className="field">
        {title}
        <input ref={field} readOnly value={link} onFocus={event => event.target.select()} />
      </label>
      <div className="pair">
        <button type="button" className="button grow" onClick={() => fire(copy())}>
          {say('share-copy')}
        </button>
        <SendLink link={link} />
      </div>
      <p role="status">{said}</p>
      <QrCode text={link} label={codeTitle} />
    </>
  )
}
