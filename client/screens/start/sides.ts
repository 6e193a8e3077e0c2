import type { FormatName } from '#core/formats/format-names.ts'
import { formatTable } from '#core/formats/table.ts'
import { say } from '../../words/say.ts'
import type { Draft, PlayerDraft } from './draft.ts'

/** Sides of player ids. */
export type Sides = readonly (readonly string[])[]

/** Every way in which these players can make the format's sides; empty when they cannot. */
export function waysToSide(format: FormatName, players: readonly { readonly id: string }[]): readonly Sides[] {
  const ids = players.map(({ id }) => id)
  const { count, balls } = formatTable[format].sides
  if (count.max === null) return ids.length === 0 ? [] : [ids.map(id => [id])]
  if (balls.min === 1) return ids.flatMap((one, place) => ids.slice(place + 1).map(other => [[one], [other]]))
  return pairings(ids)
}

/** Two pairs of four players. */
function pairings([first, ...others]: readonly string[]): readonly Sides[] {
  if (first === undefined || others.length !== 3) return []
  return others.map(partner => [[first, partner], others.filter(id => id !== partner)])
}

/** How many players the format asks for. */
export const playersNeeded = (format: FormatName): number => {
  const { count, balls } = formatTable[format].sides
  return count.min * balls.min
}

/** "Alder & Cedar v Birch & Rowan" */
export function sidesWords(draft: Draft, sides: Sides): string {
  const names = sides.map(side => side.map(id => nameOf(draft.players, id)).join(' & '))
  return say('versus', { first: names[0] ?? '', second: names[1] ?? '' })
}

export function nameOf(players: readonly PlayerDraft[], id: string): string {
  const place = players.findIndex(player => player.id === id)
  return players[place]?.name.trim() || say('start-player-n', { n: place + 1 })
}
