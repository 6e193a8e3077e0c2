import { type Card, emptyCard } from '#core/card/card.ts'
import { threesAgainstLevel } from '#core/card/level.ts'
import { type HoleKey, holeKey, type PlayedHole } from '#core/card/score.ts'
import { type PreparedGame, prepareGame, withCards } from '#core/formats/prepared-game.ts'
import type { BallId, GameId } from '#core/values/ids.ts'
import { rememberBy } from '#core/values/memo.ts'
import { courseHoleOf, gameInputOf, holesOf, orderOfBall } from './game-input-of.ts'
import { mainGameOf } from './games-of.ts'
import type { Ball, Outing } from './outing.ts'
import type { LevelCard, LevelCards } from './results.ts'

/** Every game with its strokes and settings in place, before its scores are looked at. */
export type PreparedGames = ReadonlyMap<GameId, PreparedGame>

/** What scoring a hole shows: each game's strokes, and each card against its level. The results are made of it. */
export interface Levels {
  readonly prepared: PreparedGames
  readonly cards: LevelCards
}

export const levelsOf = (outing: Outing): Levels =>
  levelsOn(outing, new Map(outing.games.map(game => [game.id, prepareGame(gameInputOf(outing, game))])))

/** The levels after scores alone, with the cards that they made new; a game that no such card is in stays as it is. */
export const levelsAfter = (before: Levels, outing: Outing, cards: ReadonlyMap<BallId, Card>): Levels =>
  levelsOn(outing, new Map([...before.prepared].map(([id, game]) => [id, withCards(game, cards)])))

const levelsOn = (outing: Outing, prepared: PreparedGames): Levels => ({
  prepared,
  cards: levelCardsOf(outing, prepared),
})

const levelCardsOf = (outing: Outing, games: PreparedGames): LevelCards => ({
  get: id => {
    const ball = outing.balls.get(id)
    return ball && levelCardOf(outing, games, ball)
  },
})

/** What a ball's levels are laid from. */
interface LevelGround {
  readonly round: readonly PlayedHole[]
  readonly holes: KnownHoles
  readonly strokes: ReadonlyMap<HoleKey, number> | null
}

function levelCardOf(outing: Outing, games: PreparedGames, ball: Ball): LevelCard {
  const main = mainGameOf(outing.games, outing.namedMain, ball.group)
  const ground: LevelGround = {
    round: orderOfBall(outing, ball).round,
    holes: knownHolesOf(outing, ball),
    strokes: main === null ? null : strokesIn(games.get(main.id), ball),
  }
  const card = outing.cards.get(ball.id) ?? emptyCard
  const made = madeOf(card)
  const known = made.get(ball.id)
  if (known !== undefined && isSameGround(known.ground, ground)) return known.level
  const level = levelOn(ground, ball.id, card)
  made.set(ball.id, { ground, level })
  return level
}

/** The last level of each ball by its very card; balls without a score share the empty one. */
const madeOf = rememberBy((_: Card) => new Map<BallId, { readonly ground: LevelGround; readonly level: LevelCard }>())

const isSameGround = (one: LevelGround, other: LevelGround): boolean =>
  one.round === other.round && one.holes === other.holes && one.strokes === other.strokes

function levelOn({ round, holes, strokes }: LevelGround, ball: BallId, card: Card): LevelCard {
  const pars = new Map<HoleKey, number>()
  const levels = new Map<HoleKey, number>()
  for (const { key, par } of holes) {
    pars.set(key, par)
    levels.set(key, par + (strokes?.get(key) ?? 0))
  }
  return { ball, levels, threes: threesAgainstLevel(round, card, pars, levels) }
}

type KnownHoles = readonly { readonly key: HoleKey; readonly par: number }[]

/** While the course is typed in, the holes that are. */
function knownHolesOf(outing: Outing, ball: Ball): KnownHoles {
  const all = holesOf(outing, ball)
  if (all !== null) return all
  const { round, extra } = orderOfBall(outing, ball)
  return [...round, ...extra].flatMap(played => {
    const par = courseHoleOf(outing, ball, played)?.par
    return par === undefined ? [] : [{ key: holeKey(played), par }]
  })
}

const strokesIn = (game: PreparedGame | undefined, ball: Ball): ReadonlyMap<HoleKey, number> | null =>
  game === undefined || game.kind === 'gap' ? null : (game.sound.strokes.get(ball.id)?.byHole ?? null)
