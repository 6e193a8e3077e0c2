import { threesAgainstLevel } from '#core/card/level.ts'
import { type HoleKey, holeKey } from '#core/card/score.ts'
import { type PreparedGame, prepareGame, resultOfPrepared } from '#core/formats/game-of.ts'
import type { GameResult } from '#core/formats/game-result.ts'
import type { BallId, GameId } from '#core/values/ids.ts'
import { courseHoleOf, gameInputOf, holesOf, orderOfBall } from './game-input-of.ts'
import { mainGameOf } from './games-of.ts'
import type { Ball, Outing } from './outing.ts'
import type { LevelCard, Results } from './results.ts'

/** Every game with its strokes and settings in place, before its scores are looked at. */
export type PreparedGames = ReadonlyMap<GameId, PreparedGame>

export const preparedOf = (outing: Outing): PreparedGames =>
  new Map(outing.games.map(game => [game.id, prepareGame(gameInputOf(outing, game))]))

/** Every game and every card's threes, computed. */
export function resultsOf(outing: Outing, prepared: PreparedGames = preparedOf(outing)): Results {
  const games = new Map([...prepared].map(([id, game]) => [id, resultOfPrepared(game, null)]))
  return {
    games,
    cards: new Map([...outing.balls].map(([id, ball]) => [id, levelCardOf(outing, games, ball)])),
  }
}

/** The results after scores of these balls alone; what no such score enters is kept as it is. */
export function resultsAfter(
  before: Results,
  outing: Outing,
  prepared: PreparedGames,
  balls: ReadonlySet<BallId>,
): Results {
  const games = new Map(before.games)
  for (const { id, sides } of outing.games) {
    const [game, result] = [prepared.get(id), before.games.get(id)]
    const isIn = sides?.some(side => side.some(ball => balls.has(ball))) ?? false
    if (isIn && game && result) games.set(id, resultOfPrepared(game, { result, changed: balls }))
  }
  const cards = new Map(before.cards)
  for (const id of balls) {
    const ball = outing.balls.get(id)
    if (ball !== undefined) cards.set(id, levelCardOf(outing, games, ball))
  }
  return { games, cards }
}

function levelCardOf(outing: Outing, games: ReadonlyMap<GameId, GameResult>, ball: Ball): LevelCard {
  const { round } = orderOfBall(outing, ball)
  const main = mainGameOf(outing.games, outing.namedMain, ball.group)
  const strokes = main === null ? null : strokesIn(games.get(main.id), ball)
  const pars = new Map<HoleKey, number>()
  const levels = new Map<HoleKey, number>()
  for (const { key, par } of knownHolesOf(outing, ball)) {
    pars.set(key, par)
    levels.set(key, par + (strokes?.get(key) ?? 0))
  }
  const card = outing.cards.get(ball.id) ?? { scores: new Map(), isClosed: false }
  return { ball: ball.id, levels, threes: threesAgainstLevel(round, card, pars, levels) }
}

/** While the course is typed in, the holes that are. */
function knownHolesOf(outing: Outing, ball: Ball): readonly { readonly key: HoleKey; readonly par: number }[] {
  const all = holesOf(outing, ball)
  if (all !== null) return all
  const { round, extra } = orderOfBall(outing, ball)
  return [...round, ...extra].flatMap(played => {
    const par = courseHoleOf(outing, ball, played)?.par
    return par === undefined ? [] : [{ key: holeKey(played), par }]
  })
}

const strokesIn = (result: GameResult | undefined, ball: Ball): ReadonlyMap<HoleKey, number> | null =>
  result === undefined || result.kind === 'gap' ? null : (result.strokes.get(ball.id)?.byHole ?? null)
