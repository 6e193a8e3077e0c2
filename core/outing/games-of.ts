import type { FormatName } from '#core/formats/format-names.ts'
import { type GameSetting, noMethods } from '#core/formats/game-methods.ts'
import { formatTable } from '#core/formats/table.ts'
import type { GameId, GroupId } from '#core/values/ids.ts'
import { factOfMethod } from './game-settings.ts'
import type { Game } from './outing.ts'
import type { Reading, RowKind } from './reading.ts'

type Draft = { -readonly [K in keyof Game]: Game[K] }

/** The kinds of fact that hold a game's methods. */
const methodKinds = Object.entries(factOfMethod) as [GameSetting, (typeof factOfMethod)[GameSetting]][]

/** The outing's games and each group's own, in order of their ids; what nobody has set is null. */
export function gamesOf(reading: Reading): Game[] {
  const games = new Map<string, Draft>()
  const change = (kind: RowKind, changed: (game: Draft, value: never) => Draft): void => {
    for (const { parts, value } of reading.rows(kind)) {
      const name = `${parts.group ?? ''}/${parts.game}`
      const game = games.get(name) ?? emptyGame(parts.game as GameId, parts.group)
      games.set(name, changed(game, value as never))
    }
  }
  change('gameFormat', (game, format) => ({ ...game, format }))
  change('gameSides', (game, sides) => ({ ...game, sides }))
  for (const [name, kind] of methodKinds) {
    change(kind, (game, value) => ({ ...game, methods: { ...game.methods, [name]: value } }))
  }
  for (const { parts, value } of reading.rows('gameHoles')) {
    const name = `${parts.group ?? ''}/${parts.game}`
    const game = games.get(name)
    // Of a game that was taken away nothing is left to play.
    if (game !== undefined) games.set(name, { ...game, holes: value })
  }
  return tellApart([...games.values()]).sort((a, b) => (a.id < b.id ? -1 : 1))
}

const emptyGame = (id: GameId, group: GroupId | null): Draft => ({
  id,
  group,
  format: null,
  sides: null,
  holes: null,
  methods: noMethods,
})

/** Two groups may give their own games one id: neither may hide the other's, nor the outing's. */
function tellApart(games: readonly Draft[]): Game[] {
  return games.map(game => {
    const isShared = games.some(other => other !== game && other.id === game.id)
    return isShared && game.group !== null ? { ...game, id: `${game.group}/${game.id}` as GameId } : game
  })
}

/** The games that the desk means by an id: the one that has it, else every group's own game that was given it. */
export function gamesNamed(games: readonly Game[], named: GameId): readonly GameId[] {
  const ids = games.map(({ id }) => id)
  return ids.includes(named) ? [named] : ids.filter(id => id.endsWith(`/${named}`))
}

/** Formats that count each ball's own strokes: the first of them makes the level unless the outing names a game. */
const countsOwnStrokes = (format: FormatName): boolean => formatTable[format].contest === 'total'

/**
 * The game whose strokes make the level of a group's balls: the one the outing names, else the first that counts each
 * ball's own strokes, else the first. Another group's own game is never it.
 */
export function mainGameOf(games: readonly Game[], named: GameId | null, group: GroupId | null): Game | null {
  const own = games.filter(game => game.group === null || game.group === group)
  const counting = own.find(({ format }) => format !== null && countsOwnStrokes(format))
  return own.find(({ id }) => id === named) ?? counting ?? own[0] ?? null
}
