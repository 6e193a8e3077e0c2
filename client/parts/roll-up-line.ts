import type { Op } from '#core/log/op.ts'
import type { FactValues } from '#core/outing/facts.ts'
import { parseKey } from '#core/outing/keys.ts'
import { formatList } from '../words/figures.ts'
import { say } from '../words/say-any.ts'

/** Players who came and balls that were thrown for groups, as one line; null for an act of another kind. */
export function rollUpLine({ facts }: Op, who: string): string | null {
  const kinds = facts.map(({ key }) => parseKey(key)?.kind)
  if (kinds.includes('ball')) {
    const names = facts.flatMap(({ value }, place) =>
      kinds[place] === 'player' && value !== null ? [(value as FactValues['player']).name] : [],
    )
    return names.length === 0 ? null : say('history-added', { who, players: formatList(names) })
  }
  const groups = facts.filter(({ value }, place) => kinds[place] === 'group' && value !== null)
  return groups.length > 0 && kinds.includes('place') ? say('history-thrown', { who, n: groups.length }) : null
}
