import { useEffect, useRef, useState } from 'react'
import type { GroupId } from '#core/values/ids.ts'
import { copyText } from '../../device/sharing.ts'
import { inviteLink } from '../../state/inviting.ts'
import { say } from '../../words/say-any.ts'
import { QrCode } from './QrCode.tsx'
import { SendLink } from './SendLink.tsx'

interface Props {
  readonly role: 'desk' | 'scorer' | 'viewer'
  readonly group: GroupId | null
}

/** The invite as text to copy and as a QR code. */
export function InviteLink({ role, group }: Props) {
  const [link, setLink] = useState<string | null>(null)
  const [said, setSaid] = useState('')
  const field = useRef<HTMLInputElement>(null)
  useEffect(() => {
    let isWanted = true
    inviteLink(role, group).then(
      made => isWanted && setLink(made),
      (reason: unknown) => reportError(reason),
    )
    return () => {
      isWanted = false
    }
  }, [role, group])
  if (link === null) return <p role="status">{say('working')}</p>
  const copy = async (): Promise<void> => {
    field.current?.select()
    // On plain http the browser has no clipboard for pages; the link stays selected.
    const isCopied = await copyText(link)
    setSaid(say(isCopied ? 'share-copied' : 'share-select'))
  }
  return (
    <section className="section" aria-label={say('share-link-title')}>
      <h2>{say('share-link-title')}</h2>
      <label className="field">
        {say('share-link')}
        <input ref={field} readOnly value={link} onFocus={event => event.target.select()} />
      </label>
      <div className="pair">
        <button type="button" className="button grow" onClick={() => void copy()}>
          {say('share-copy')}
        </button>
        <SendLink link={link} />
      </div>
      <p role="status">{said}</p>
      <QrCode text={link} label={say('share-qr')} />
      <p className="quiet">{say('share-hint')}</p>
    </section>
  )
}
