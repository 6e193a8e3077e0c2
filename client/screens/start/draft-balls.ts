import { type FormatName, formatNames } from '#core/formats/format-names.ts'
import { say } from '../../words/say-any.ts'
import { fitsBalls } from '../games/families.ts'
import { mostListed, type Named, type Sides, waysToPart } from '../games/sides.ts'
import type { Draft, PlayerDraft } from './draft.ts'

/** A ball of the outing to come: its players by id. */
export interface BallDraft {
  readonly id: string
  readonly players: readonly string[]
}

/** Every way to make balls of so many players with nobody left over. */
export function waysToPartner(players: readonly PlayerDraft[], ballPlayers: number): readonly Sides[] {
  if (players.length === 0 || players.length % ballPlayers !== 0) return []
  const ids = players.map(({ id }) => id)
  // Of a field the ways are too many to list: as the players are listed.
  if (players.length > mostListed) return [inSides(ids, ballPlayers)]
  const sizes = Array<number>(players.length / ballPlayers).fill(ballPlayers)
  return waysToPart(ids, sizes)
}

const inSides = (ids: readonly string[], size: number): Sides =>
  Array.from({ length: ids.length / size }, (_, place) => ids.slice(place * size, (place + 1) * size))

/** Partners chosen stay together while all of them are there; whoever is left shares as listed, with nobody over. */
export function partnersOfDraft({ players, ballPlayers, partnersChosen }: Draft): Sides {
  const ids = players.map(({ id }) => id)
  const kept = (partnersChosen ?? []).filter(side => side.length === ballPlayers && side.every(id => ids.includes(id)))
  const left = ids.filter(id => !kept.flat().includes(id))
  return left.length % ballPlayers === 0 ? [...kept, ...inSides(left, ballPlayers)] : []
}

/** Each player's own ball with the player's id, or the balls of partners: a ball is the same as long as its players are. */
export function ballsOfDraft(draft: Draft): readonly BallDraft[] {
  return partnersOfDraft(draft).map(side => ({ id: side.join('-'), players: side }))
}

/** The balls by their players' names: "Alder & Cedar". */
export const namesOf = ({ players }: Draft, balls: readonly BallDraft[]): readonly Named[] =>
  balls.map(ball => ({ id: ball.id, name: ball.players.map(id => nameOf(players, id)).join(' & ') }))

/** The games that are on and played with these balls, in the order of the list of formats. */
export const gamesChosen = ({ games, ballPlayers }: Draft): readonly FormatName[] =>
  formatNames.filter(format => games[format].isOn && fitsBalls(format, ballPlayers))

export function nameOf(players: readonly PlayerDraft[], id: string): string {
  const place = players.findIndex(player => player.id === id)
  return players[place]?.name.trim() || say('start-player-n', { n: place + 1 })
}
