import type { Grant } from '#core/outing/facts.ts'
import type { Outing } from '#core/outing/outing.ts'
import { say } from '../../words/say-any.ts'

/** What an invite lets a phone do: "to score for Group 2". */
export function inviteText({ groups }: Outing, { role, group }: Pick<Grant, 'role' | 'group'>): string {
  if (role === 'viewer') return say('share-viewer')
  if (role === 'desk') return say(groups.size < 2 ? 'share-desk-one' : 'share-desk')
  return say('share-scorer', { group: (group && groups.get(group)?.name) ?? group ?? '' })
}
