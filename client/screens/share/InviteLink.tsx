import { useEffect, useState } from 'react'
import type { GroupId } from '#core/values/ids.ts'
import { inviteLink } from '../../state/inviting.ts'
import { say } from '../../words/say-any.ts'
import { LinkAsCode } from './LinkAsCode.tsx'

interface Props {
  readonly role: 'desk' | 'scorer' | 'viewer'
  readonly group: GroupId | null
}

/** The invite as text to copy and as a QR code. */
export function InviteLink({ role, group }: Props) {
  const [link, setLink] = useState<string | null>(null)
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
  return (
    <section className="section" aria-label={say('share-link-title')}>
      <h2>{say('share-link-title')}</h2>
      <LinkAsCode link={link} title={say('share-link')} codeTitle={say('share-qr')} />
      <p className="quiet">{say('share-hint')}</p>
    </section>
  )
}
