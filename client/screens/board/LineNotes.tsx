import type { TotalLine } from '#core/formats/game-result.ts'
import type { Outing } from '#core/outing/outing.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatList } from '../../words/figures.ts'
import { isolated } from '../../words/isolated.ts'
import { say } from '../../words/say-any.ts'
import { Details } from './Details.tsx'

/** What the totals do not say by themselves: penalties, drives used, holes that count otherwise. */
export function LineNotes({ outing, lines }: { readonly outing: Outing; readonly lines: readonly TotalLine[] }) {
  const words = lines.flatMap(line => lineNotes(outing, line))
  return <Details title={say('board-notes')} lines={words} />
}

export function lineNotes(
  outing: Outing,
  { side, notes, penalty, ghost, drawnCard, drives, withdrawn, disqualified }: TotalLine,
): string[] {
  const name = sideName(outing, side)
  const ofHoles = [...notes].flatMap(([key, all]) => {
    // A hole outside the game's own is no news.
    const found = all.filter(({ code }) => code !== 'out-of-play' || outing.notes.holesOut.has(key))
    if (found.length === 0) return []
    const why = found.map(({ code, ball }) =>
      say(`note-code-${code}`, { player: sideName(outing, ball ? [ball] : side) }),
    )
    return say('line-hole', { side: name, hole: key.split('/')[0] ?? '', why: formatList(why) })
  })
  const used = drives.map(({ player, count }) =>
    say('drives-of', { player: outing.players.get(player)?.name ?? player, n: count }),
  )
  return [
    ...(withdrawn?.reason ? [`${name}: ${say('board-withdrawn')}, ${isolated(withdrawn.reason)}`] : []),
    ...(disqualified?.reason ? [`${name}: ${say('board-disqualified')}, ${isolated(disqualified.reason)}`] : []),
    ...(penalty === 0 ? [] : [`${name}: ${say('board-penalty', { n: penalty })}`]),
    ...(ghost === null ? [] : [`${name}: ${say('board-ghost', { n: ghost < 0 ? `+${-ghost}` : ghost })}`]),
    ...(drawnCard === null ? [] : [`${name}: ${say('board-drawn', { player: sideName(outing, [drawnCard]) })}`]),
    ...(used.length === 0 ? [] : [`${name}: ${say('board-drives', { drives: formatList(used) })}`]),
    ...ofHoles,
  ]
}
