import type { Card } from '#core/card/card.ts'
import type { HoleKey } from '#core/card/score.ts'
import { bestBalls } from '#core/formats/ball-rules/best-balls.ts'
import { must } from '#core/values/assert.ts'
import { fraction } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import { rememberBy } from '#core/values/memo.ts'
import { ballHandicap } from './ball-handicap.ts'
import { contestStrokes, type StrokesGiven } from './contest-names.ts'
import type { FormatRow } from './format-row.ts'
import { gapsOfBalls, gapsOfGame, needsHandicaps } from './game-gaps.ts'
import type { GameInput, InputBall, InputHole, SoundBall, SoundGame } from './game-input.ts'
import type { BallStrokes, GameGap, GameResult } from './game-result.ts'
import {
  ballStrokes,
  type KnownHandicap,
  noStrokes,
  ownStrokes,
  strokeMethodsOf,
  strokesGiven,
} from './game-strokes.ts'
import { ballsThere, type Ghost, type GhostPart, ghostOf, isShort } from './ghost.ts'
import { formatTable } from './table.ts'
import { type TeePars, teeParsOf } from './tee-par-strokes.ts'

/** A game before its scores are looked at: strokes and settings are in place, or the result is what it lacks. */
export type PreparedGame =
  | { readonly kind: 'gap'; readonly result: GameResult }
  | { readonly kind: 'sound'; readonly sound: SoundGame }

/** The game with other cards; nothing else of it hangs on a score. */
export function withCards(game: PreparedGame, cards: ReadonlyMap<BallId, Card>): PreparedGame {
  if (game.kind === 'gap' || ![...cards.keys()].some(ball => game.sound.balls.has(ball))) return game
  const balls = new Map(game.sound.balls)
  for (const [id, card] of cards) {
    const ball = balls.get(id)
    if (ball !== undefined) balls.set(id, { ...ball, card })
  }
  return { ...game, sound: { ...game.sound, balls } }
}

export function prepareGame(input: GameInput): PreparedGame {
  const { game, format } = input
  if (format === null) return gapOf(input, [{ code: 'no format', ball: null, setting: '' }])
  const row = formatTable[format]
  const gaps = gapsOfGame(input, row)
  const ballGaps = gapsOfBalls(input, row).filter(each => !gaps.some(other => isSame(each, other)))
  const sides = sidesWithoutGaps(input, ballGaps)
  const given = contestStrokes[row.contest]
  const isShort = given === 'difference' ? ballGaps.length > 0 : sides.length === 0
  if (gaps.length > 0 || isShort) return gapOf(input, [...gaps, ...ballGaps])
  const balls = soundBalls(input, sides.flat())
  const { ballRule, measure, contest } = row
  const teePars = teeParsOf(input, balls, row.recordedAs)
  const strokes = strokesOf(input, row, balls, given, teePars)
  const { methods, happenings } = input
  const sound: SoundGame = {
    game,
    format,
    ballRule,
    measure,
    contest,
    sides,
    balls,
    strokes,
    strokesBetween: these => strokesOf(input, row, only(balls, these), 'difference', teePars),
    teePar: row.measure.isNet ? teeParByHole(strokes, teePars) : new Map(),
    methods,
    happenings,
    ghosts: ghostsOf(input, row, sides, balls, teePars),
    gaps: ballGaps,
  }
  return { kind: 'sound', sound }
}

const gapOf = ({ game, format }: GameInput, gaps: readonly GameGap[]): PreparedGame => ({
  kind: 'gap',
  result: { kind: 'gap', game, format, gaps },
})

const isSame = (one: GameGap, other: GameGap): boolean => one.code === other.code && one.ball === other.ball

/** One ball's gap closes its own side alone. */
function sidesWithoutGaps({ sides }: GameInput, gaps: readonly GameGap[]): (readonly BallId[])[] {
  const short = new Set(gaps.map(({ ball }) => ball))
  return (sides ?? []).filter(side => !side.some(ball => short.has(ball)))
}

const inputBall = (input: GameInput, ball: BallId): InputBall => must(input.balls.get(ball), 'the ball is there')

function soundBalls(input: GameInput, balls: readonly BallId[]): Map<BallId, SoundBall> {
  return new Map(
    balls.map(ball => {
      const { holes, card, handicaps } = inputBall(input, ball)
      const order = must(holes, 'the course is complete')
      const players = handicaps.map(({ player }) => player)
      return [ball, { order, holes: byKeyOf(order), card, players }]
    }),
  )
}

const byKeyOf = rememberBy((order: readonly InputHole[]) => new Map(order.map(hole => [hole.key, hole])))

const only = (balls: ReadonlyMap<BallId, SoundBall>, these: readonly BallId[]): Map<BallId, SoundBall> =>
  new Map([...balls].filter(([ball]) => these.includes(ball)))

function strokesOf(
  input: GameInput,
  row: FormatRow,
  balls: ReadonlyMap<BallId, SoundBall>,
  given: StrokesGiven,
  teePars: TeePars,
): Map<BallId, BallStrokes> {
  if (!needsHandicaps(row, input.methods)) {
    return new Map([...balls].map(([ball, { order }]) => [ball, noStrokes(order)]))
  }
  const methods = strokeMethodsOf(input.methods, row.sides.players.min)
  const { netOff } = input.happenings
  const isFixed = (ball: BallId): boolean => given === 'own' && netOff.has(ball)
  const added = [...balls.keys()].map(ball => (isFixed(ball) ? 0 : teePars.addition(ball)))
  const handicaps = [...balls.keys()].map(ball => knownHandicap(input, row, ball, given))
  const playing = handicaps.map((handicap, place) => ownStrokes(handicap, methods) + (added[place] ?? 0))
  const strokes = given === 'own' ? playing : fromLowest(strokesGiven(handicaps, methods), added)
  return new Map(
    [...balls].map(([ball, { order }], place) => {
      const handicap = must(handicaps[place], 'one a ball')
      return [ball, ballStrokes(handicap, playing[place] ?? 0, strokes[place] ?? 0, added[place] ?? 0, order)]
    }),
  )
}

/** The ghosts of the sides that are short, where the game has them. */
function ghostsOf(
  input: GameInput,
  row: FormatRow,
  sides: readonly (readonly BallId[])[],
  balls: ReadonlyMap<BallId, SoundBall>,
  teePars: TeePars,
): Map<readonly BallId[], Ghost> {
  const { methods, happenings } = input
  const method = methods.shortTeam
  if (method === null || row.ballRule !== bestBalls) return new Map()
  const short = sides.filter(side => isShort(happenings, sides, side))
  return new Map(
    short.flatMap(side => {
      const parts = ballsThere(happenings, side).map((id): [BallId, GhostPart] => [
        id,
        {
          handicap: knownHandicap(input, row, id, 'own'),
          added: happenings.netOff.has(id) ? 0 : teePars.addition(id),
          ball: must(balls.get(id), 'the ball is there'),
        },
      ])
      const ghost = ghostOf(new Map(parts), method, strokeMethodsOf(methods, row.sides.players.min))
      return ghost === null ? [] : [[side, ghost] as const]
    }),
  )
}

/** The par differences of the tees go in after the allowance; then the lowest plays off none again. */
function fromLowest(given: readonly number[], added: readonly number[]): number[] {
  const strokes = given.map((each, place) => each + (added[place] ?? 0))
  const lowest = Math.min(...strokes)
  return strokes.map(each => each - lowest)
}

function teeParByHole(
  strokes: ReadonlyMap<BallId, BallStrokes>,
  teePars: TeePars,
): Map<BallId, ReadonlyMap<HoleKey, number>> {
  const added = new Map<BallId, ReadonlyMap<HoleKey, number>>()
  for (const [ball, of] of strokes) {
    const byHole = teePars.byHole(ball, of.strokes)
    if (byHole !== null) added.set(ball, byHole)
  }
  return added
}

/**
 * A handicap declared too low in a match is what its ball plays off: Rules of Golf, rule 3.2c(1); 2019 and 2023. One too low
 * on a card is what the net score is off, tee and all: rule 3.3b(4); 2019, and 2023 under Model Local Rule L-2.
 */
function knownHandicap(input: GameInput, { recordedAs }: FormatRow, ball: BallId, given: StrokesGiven): KnownHandicap {
  const handicap = ballHandicap(inputBall(input, ball).handicaps, input.methods, recordedAs)
  if (handicap.kind === 'gap') throw new Error('a game with a gap is not computed')
  const { playsOff, netOff } = input.happenings
  const onCard = given === 'own' ? netOff.get(ball) : undefined
  if (onCard !== undefined) return { kind: 'plain', strokes: onCard }
  const declared = given === 'own' ? undefined : playsOff.get(ball)
  if (declared === undefined) return handicap
  return handicap.kind === 'plain'
    ? { kind: 'plain', strokes: declared }
    : { kind: 'course', exact: fraction(declared) }
}
