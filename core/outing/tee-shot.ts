import { type HoleKey, holeKey, type PlayedHole } from '#core/card/score.ts'
import { foursomesTeePlayer } from '#core/formats/foursomes-tee.ts'
import { formatTable } from '#core/formats/table.ts'
import type { BallId, PlayerId } from '#core/values/ids.ts'
import { orderOfBall } from './game-input-of.ts'
import type { Ball, Outing } from './outing.ts'

/** The balls of two that are in a game of foursomes: their partners tee off in turn. */
export const ballsInTurn = ({ games, balls }: Outing): readonly Ball[] =>
  [...balls.values()].filter(({ id, players }) => players.length === 2 && games.some(game => isInTurn(game, id)))

const isInTurn = ({ format, sides }: Outing['games'][number], ball: BallId): boolean =>
  format !== null && formatTable[format].isInTurn === true && (sides?.some(side => side.includes(ball)) ?? false)

/**
 * The partner who tees off on a hole, by the last that was said at or before it in order of play, else by the first that
 * was said after it; null while nobody has said anything. Partners take turns hole by hole in order of play, so that one
 * has the odd holes and the other the even ones of a round from the first hole, and the turns go on over extra holes.
 * Source: Rules of Golf, rule 22.3; R&A and USGA; 2019 and 2023.
 */
export function teeShotOf(outing: Outing, ball: Ball, at: PlayedHole): PlayerId | null {
  const [first, second, ...others] = ball.players
  if (first === undefined || second === undefined || others.length > 0) return null
  const order = holesInOrder(outing, ball)
  const here = order.indexOf(holeKey(at))
  const said = saidInOrder(outing, ball, order)
  const found = said.filter(({ place }) => place <= here).at(-1) ?? said[0]
  if (here === -1 || found === undefined) return null
  // Places count like the holes of a round from the first one.
  const saidAt = (found.place + 1) % 2 === 0 ? 'even' : 'odd'
  const firstTeesAt = found.player === first ? saidAt : saidAt === 'odd' ? 'even' : 'odd'
  return foursomesTeePlayer(firstTeesAt, here + 1) === 'first' ? first : second
}

function holesInOrder(outing: Outing, ball: Ball): readonly HoleKey[] {
  const { round, extra } = orderOfBall(outing, ball)
  return [...round, ...extra].map(holeKey)
}

interface Said {
  readonly place: number
  readonly player: PlayerId
}

/** What was said of the ball's partners, in order of play; of anybody else it says nothing. */
function saidInOrder({ notes }: Outing, { id, players }: Ball, order: readonly HoleKey[]): readonly Said[] {
  return [...(notes.teeShots.get(id) ?? [])]
    .map(([key, player]) => ({ place: order.indexOf(key), player }))
    .filter(({ place, player }) => place !== -1 && players.includes(player))
    .sort((one, other) => one.place - other.place)
}
