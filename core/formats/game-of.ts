import { contestTable } from '#core/formats/contests/contest-table.ts'
import type { Earlier, GameInput } from './game-input.ts'
import type { GameResult } from './game-result.ts'
import { type PreparedGame, prepareGame } from './prepared-game.ts'

/** One game computed from its own settings and nothing else, or what it still lacks. */
export const resultOfGame = (input: GameInput): GameResult => resultOfPrepared(prepareGame(input), null)

/** With what it came to before and the balls whose scores changed since, where that is known. */
export const resultOfPrepared = (game: PreparedGame, earlier: Earlier | null): GameResult =>
  game.kind === 'gap' ? game.result : contestTable[game.sound.contest](game.sound, earlier)
