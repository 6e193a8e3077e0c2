import { emptyCard } from '#core/card/card.ts'
import { type OrderOfPlay, orderOfPlay } from '#core/card/order-of-play.ts'
import { holeKey, type PlayedHole } from '#core/card/score.ts'
import type { BallHandicap, GameInput, InputBall, InputHole, PlayerHandicap } from '#core/formats/game-input.ts'
import { noMethods } from '#core/formats/game-methods.ts'
import type { PlayerId, TeeId } from '#core/values/ids.ts'
import { rememberBy } from '#core/values/memo.ts'
import type { CourseHole, Tee } from './facts.ts'
import { mainGameOf } from './games-of.ts'
import { handicapOf, ratingsOfRound } from './handicap-of.ts'
import { happeningsOf } from './happenings-of.ts'
import type { Ball, Game, Outing, Player } from './outing.ts'

/** A game with all that its result depends on. */
export function gameInputOf(outing: Outing, game: Game): GameInput {
  const balls = (game.sides?.flat() ?? []).flatMap(id => {
    const ball = outing.balls.get(id)
    return ball === undefined ? [] : [[id, inputBall(outing, game, ball)] as const]
  })
  const { id, format, sides, methods } = game
  return { game: id, format, sides, methods, balls: new Map(balls), happenings: happeningsOf(outing, game) }
}

const inputBall = (outing: Outing, game: Game, ball: Ball): InputBall => ({
  holes: holesOf(outing, ball),
  card: outing.cards.get(ball.id) ?? emptyCard,
  handicaps: ball.players.map(player => playerHandicap(outing, game, ball, player)),
})

/** The order of play of the ball's group; of a ball without one, the holes as they are numbered. */
export const orderOfBall = (outing: Outing, ball: Ball): OrderOfPlay =>
  (ball.group === null ? null : outing.groups.get(ball.group)) ?? orderOfPlay(null, outing.length)

function playerHandicap(outing: Outing, game: Game, ball: Ball, id: PlayerId): PlayerHandicap {
  const player = outing.players.get(id)
  if (player === undefined) {
    return { player: id, handicap: { kind: 'gap', code: 'handicap missing' }, parOfRound: null, ratings: null }
  }
  const tee = teeOf(outing, player)
  const { round } = orderOfBall(outing, ball)
  const handicap = handicapOf(player, tee, round, game.methods)
  return { player: id, handicap, parOfRound: parOfRound(outing, tee, round), ratings: ratingsOfRound(tee, round) }
}

function parOfRound(outing: Outing, tee: Tee | null, round: readonly PlayedHole[]): number | null {
  const pars = round.map(({ hole }) => tee?.pars?.[hole - 1] ?? outing.holes.get(hole)?.par ?? null)
  return pars.every(par => par !== null) ? pars.reduce((sum, par) => sum + par, 0) : null
}

/** A player's handicap for the main game over the round of their ball's group: what a list of players shows. */
export function handicapOfPlayer(outing: Outing, player: Player): BallHandicap {
  const ball = [...outing.balls.values()].find(({ players }) => players.includes(player.id))
  const main = mainGameOf(outing.games, outing.namedMain, ball?.group ?? null)
  const { round } = ball === undefined ? orderOfPlay(null, outing.length) : orderOfBall(outing, ball)
  return handicapOf(player, teeOf(outing, player), round, main?.methods ?? noMethods)
}

export const teeOf = (outing: Outing, player: Player): Tee | null =>
  player.tee === null ? null : (outing.tees.get(player.tee) ?? null)

/**
 * The holes of a ball's order of play with par and index from its own tee; null while one of them is unknown. One list
 * for all who play them alike.
 */
export function holesOf(outing: Outing, ball: Ball): readonly InputHole[] | null {
  const order = orderOfBall(outing, ball)
  const laid = laidOn(outing.holes)
  const name = `${teeOfBall(outing, ball)?.id ?? ''}|${nameOfOrder(order.round)}|${nameOfOrder(order.extra)}`
  const known = laid.get(name)
  if (known !== undefined) return known
  const holes = layHoles(outing, ball, order)
  laid.set(name, holes)
  return holes
}

/** By the outing's own course: a course and its tees are read together, and scores leave them as they are. */
const laidOn = rememberBy((_: Outing['holes']) => new Map<string, readonly InputHole[] | null>())

const nameOfOrder = rememberBy((round: readonly PlayedHole[]) => round.map(holeKey).join(' '))

function layHoles(outing: Outing, ball: Ball, { round, extra }: OrderOfPlay): InputHole[] | null {
  const holes = [...round, ...extra].map((played, place) => {
    const hole = courseHoleOf(outing, ball, played)
    return hole && { key: holeKey(played), ...played, ...hole, isScheduled: place < round.length }
  })
  return holes.every(hole => hole !== null) ? holes : null
}

/** The tee of the ball's first player; null where nobody has said one. */
function teeOfBall(outing: Outing, { players: [first] }: Ball): { readonly id: TeeId; readonly tee: Tee } | null {
  const id = first === undefined ? null : (outing.players.get(first)?.tee ?? null)
  const tee = id === null ? undefined : outing.tees.get(id)
  return id === null || tee === undefined ? null : { id, tee }
}

/** Par and index of a hole for a ball: what its tee says wins over the course. */
export function courseHoleOf(outing: Outing, ball: Ball, { hole }: PlayedHole): CourseHole | null {
  const tee = teeOfBall(outing, ball)?.tee
  const course = outing.holes.get(hole)
  const par = tee?.pars?.[hole - 1] ?? course?.par
  const index = tee?.indexes?.[hole - 1] ?? course?.index
  return par === undefined || index === undefined ? null : { par, index }
}
