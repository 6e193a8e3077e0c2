import type { GameMethods, GameSetting } from '#core/formats/game-methods.ts'
import type { PlainGame } from './plain-file.ts'

/** The methods that are set, under the names of the plain file. */
export const namedMethods = ({ allowancePercent: allowance, ...methods }: GameMethods): Partial<PlainGame> =>
  Object.fromEntries(Object.entries({ allowance, ...methods }).filter(([, value]) => value !== null))

/** The methods that a game of the file names. */
export function methodsNamed(game: PlainGame): Partial<GameMethods> {
  const { id: _id, format: _format, group: _group, sides: _sides, allowance: allowancePercent, ...methods } = game
  const named: { readonly [K in GameSetting]?: GameMethods[K] | undefined } = { allowancePercent, ...methods }
  return Object.fromEntries(Object.entries(named).filter(([, value]) => value !== undefined))
}
