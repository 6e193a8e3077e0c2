import type { GameId } from '#core/values/ids.ts'

/** A game's id as a plain file has it: a group's own game that shares its id with another carries the group's before it. */
export const plainGameId = (id: GameId): GameId => id.replace('/', '-') as GameId
