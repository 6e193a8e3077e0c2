import { must } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'
import { ballHandicap } from './ball-handicap.ts'
import { gapsOfBalls, gapsOfGame } from './game-gaps.ts'
import type { GameInput, InputBall, SoundBall, SoundGame } from './game-input.ts'
import type { BallStrokes, GameGap, GameResult } from './game-result.ts'
import {
  ballStrokes,
  type KnownHandicap,
  noStrokes,
  ownStrokes,
  strokeMethodsOf,
  strokesGiven,
} from './game-strokes.ts'
import { type FormatRow, formatTable } from './table.ts'

/** One game computed from its own settings and nothing else, or what it still lacks. */
export function resultOfGame(input: GameInput): GameResult {
  const { game, format } = input
  if (format === null) {
    return { kind: 'gap', game, format, gaps: [{ code: 'no format', ball: null, setting: '' }] }
  }
  const row = formatTable[format]
  const gaps = gapsOfGame(input, row)
  const ballGaps = gapsOfBalls(input, row)
  const sides = sidesWithoutGaps(input, ballGaps)
  const isShort = row.contest.strokes === 'difference' ? ballGaps.length > 0 : sides.length === 0
  if (gaps.length > 0 || isShort) return { kind: 'gap', game, format, gaps: [...gaps, ...ballGaps] }
  const balls = soundBalls(input, sides.flat())
  const { ballRule, measure } = row
  const strokes = strokesOf(input, row, balls)
  const { methods, happenings } = input
  const sound: SoundGame = {
    game,
    format,
    ballRule,
    measure,
    sides,
    balls,
    strokes,
    methods,
    happenings,
    gaps: ballGaps,
  }
  return row.contest.resultOf(sound)
}

/** One ball's gap closes its own side alone. */
function sidesWithoutGaps({ sides }: GameInput, gaps: readonly GameGap[]): (readonly BallId[])[] {
  const short = new Set(gaps.map(({ ball }) => ball))
  return (sides ?? []).filter(side => !side.some(ball => short.has(ball)))
}

const inputBall = (input: GameInput, ball: BallId): InputBall => must(input.balls.get(ball), 'the ball is there')

function soundBalls(input: GameInput, balls: readonly BallId[]): Map<BallId, SoundBall> {
  return new Map(
    balls.map(ball => {
      const { holes, card } = inputBall(input, ball)
      const order = must(holes, 'the course is complete')
      return [ball, { order, holes: new Map(order.map(hole => [hole.key, hole])), card }]
    }),
  )
}

function strokesOf(input: GameInput, row: FormatRow, balls: ReadonlyMap<BallId, SoundBall>): Map<BallId, BallStrokes> {
  if (!row.measure.isNet) return new Map([...balls].map(([ball, { order }]) => [ball, noStrokes(order)]))
  const methods = strokeMethodsOf(input.methods, row.sides.players.min)
  const handicaps = [...balls.keys()].map(ball => knownHandicap(input, ball))
  const own = handicaps.map(handicap => ownStrokes(handicap, methods))
  const strokes = row.contest.strokes === 'own' ? own : strokesGiven(handicaps, methods)
  return new Map(
    [...balls].map(([ball, { order }], place) => [
      ball,
      ballStrokes(must(handicaps[place], 'one a ball'), own[place] ?? 0, strokes[place] ?? 0, order),
    ]),
  )
}

function knownHandicap(input: GameInput, ball: BallId): KnownHandicap {
  const handicap = ballHandicap(inputBall(input, ball).handicaps, input.methods)
  if (handicap.kind === 'gap') throw new Error('a game with a gap is not computed')
  return handicap
}
