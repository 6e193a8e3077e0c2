import { useCallback } from 'react'
import type { GroupId } from '#core/values/ids.ts'
import { useAnswer } from '../../parts/use-answer.ts'
import { inviteLink } from '../../state/inviting.ts'
import { say } from '../../words/say-any.ts'
import { LinkAsCode } from './LinkAsCode.tsx'

interface Props {
  readonly role: 'desk' | 'scorer' | 'viewer'
  readonly group: GroupId | null
}

/** The invite as text to copy and as a QR code. */
export function InviteLink({ role, group }: Props) {
  const link = useAnswer(useCallback(() => inviteLink(role, group), [role, group]))
  if (link === null) return <p role="status">{say('working')}</p>
  return (
    <section className="section" aria-label={say('share-link-title')}>
      <h2>{say('share-link-title')}</h2>
      <LinkAsCode link={link} title={say('share-link')} codeTitle={say('share-qr')} />
      <p className="quiet">{say('share-hint')}</p>
    </section>
  )
}
