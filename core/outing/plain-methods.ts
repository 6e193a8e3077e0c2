import type { FormatName } from '#core/formats/format-names.ts'
import type { GameMethods, GameSetting } from '#core/formats/game-methods.ts'
import { defaultGameMethods, methodsMeant } from './game-settings.ts'
import type { PlainGame } from './plain-file.ts'

/**
 * The methods that are set, under the names of the plain file; null for one that is not set although a new game of the
 * format proposes it, as where ties stand.
 */
export function namedMethods(format: FormatName, methods: GameMethods): Partial<PlainGame> {
  const { allowancePercent: allowance, ...others } = methodsMeant(format, methods)
  const { allowancePercent: proposedAllowance, ...proposed } = defaultGameMethods(format, methods)
  const proposals: Readonly<Record<string, unknown>> = { allowance: proposedAllowance, ...proposed }
  return Object.fromEntries(
    Object.entries({ allowance, ...others }).filter(([name, value]) => value !== null || proposals[name] !== null),
  )
}

/** The methods that a game of the file names. */
export function methodsNamed(game: PlainGame): Partial<GameMethods> {
  const {
    id: _id,
    format: _format,
    group: _group,
    sides: _sides,
    from: _from,
    to: _to,
    allowance: allowancePercent,
    ...methods
  } = game
  const named: { readonly [K in GameSetting]?: GameMethods[K] | undefined } = { allowancePercent, ...methods }
  return Object.fromEntries(Object.entries(named).filter(([, value]) => value !== undefined))
}
