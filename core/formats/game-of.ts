import { must } from '#core/values/assert.ts'
import { fraction } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import { ballHandicap } from './ball-handicap.ts'
import { gapsOfBalls, gapsOfGame } from './game-gaps.ts'
import type { Contest, GameInput, InputBall, SoundBall, SoundGame } from './game-input.ts'
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
  const { methods, happenings } = input
  const sound: SoundGame = {
    game,
    format,
    ballRule,
    measure,
    sides,
    balls,
    strokes: strokesOf(input, row, balls, row.contest.strokes),
    strokesBetween: these => strokesOf(input, row, only(balls, these), 'difference'),
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

const only = (balls: ReadonlyMap<BallId, SoundBall>, these: readonly BallId[]): Map<BallId, SoundBall> =>
  new Map([...balls].filter(([ball]) => these.includes(ball)))

function strokesOf(
  input: GameInput,
  row: FormatRow,
  balls: ReadonlyMap<BallId, SoundBall>,
  given: Contest['strokes'],
): Map<BallId, BallStrokes> {
  if (!row.measure.isNet) return new Map([...balls].map(([ball, { order }]) => [ball, noStrokes(order)]))
  const methods = strokeMethodsOf(input.methods, row.sides.players.min)
  const handicaps = [...balls.keys()].map(ball => knownHandicap(input, ball, given))
  const own = handicaps.map(handicap => ownStrokes(handicap, methods))
  const strokes = given === 'own' ? own : strokesGiven(handicaps, methods)
  return new Map(
    [...balls].map(([ball, { order }], place) => [
      ball,
      ballStrokes(must(handicaps[place], 'one a ball'), own[place] ?? 0, strokes[place] ?? 0, order),
    ]),
  )
}

/** A handicap declared too low in a match is what its ball plays off: Rules of Golf, rule 3.2c(1); 2019 and 2023. */
function knownHandicap(input: GameInput, ball: BallId, given: Contest['strokes']): KnownHandicap {
  const handicap = ballHandicap(inputBall(input, ball).handicaps, input.methods)
  if (handicap.kind === 'gap') throw new Error('a game with a gap is not computed')
  const declared = given === 'own' ? undefined : input.happenings.playsOff.get(ball)
  if (declared === undefined) return handicap
  return handicap.kind === 'plain'
    ? { kind: 'plain', strokes: declared }
    : { kind: 'course', exact: fraction(declared) }
}
