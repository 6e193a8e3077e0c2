import { keysOf, type LogState } from '#core/log/fold.ts'
import { parseKey } from '#core/outing/keys.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import type { GameId, GroupId } from '#core/values/ids.ts'
import type { Me } from '../../state/outing-store.ts'
import type { Named } from './sides.ts'

/** The balls that the games of a group, or of the whole outing (null), are played with. */
export interface BallsInPlay {
  readonly balls: readonly Named[]
  /** How many players share each of them. */
  readonly ballPlayers: number
}

/** Where balls of one player and of several stand side by side, those like the first. */
export function ballsInPlay(outing: Outing, group: GroupId | null): BallsInPlay {
  const all =
    group === null ? [...outing.groups.values()].flatMap(({ balls }) => balls) : (outing.groups.get(group)?.balls ?? [])
  const found = all.flatMap(id => outing.balls.get(id) ?? [])
  const ballPlayers = found[0]?.players.length ?? 1
  return {
    balls: found.filter(({ players }) => players.length === ballPlayers).map(({ id, name }) => ({ id, name })),
    ballPlayers,
  }
}

/** Whose games this phone may change: null is the whole outing's. */
export function scopesOf(outing: Outing, me: Me | null): readonly (GroupId | null)[] {
  if (me?.role === 'desk') return outing.groups.size > 1 ? [null, ...groupsWithGames(outing)] : [null]
  return me?.role === 'scorer' && me.group !== null ? [me.group] : []
}

/** Groups that play, and one that everybody has left where it has games of its own. */
const groupsWithGames = (outing: Outing): readonly GroupId[] =>
  [...outing.groups.values()]
    .filter(({ id, balls }) => balls.length > 0 || outing.games.some(({ group }) => group === id))
    .map(({ id }) => id)

/** True where this phone may change the game. */
export const mayChange = (outing: Outing, me: Me | null, { id }: Game): boolean =>
  scopesOf(outing, me).some(scope => gamesIn(outing, scope).some(game => game.id === id))

/** The games that belong to a scope; in an outing of one group the desk has all of them. */
export const gamesIn = (outing: Outing, scope: GroupId | null): readonly Game[] =>
  outing.games.filter(({ group }) => group === scope || (scope === null && outing.groups.size < 2))

/**
 * The id of a new game: the format's name, so that two phones that put in the same game make one. A name that something
 * still stands under gives way to a new id: what was conceded in a game taken away is not raised again.
 */
export function newGameId(state: LogState, format: string, createId: () => string): GameId {
  const isUsed = keysOf(state).some(key => parseKey(key)?.game === format)
  return (isUsed ? createId() : format) as GameId
}
