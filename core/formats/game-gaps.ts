import type { BallId } from '#core/values/ids.ts'
import { ballHandicap } from './ball-handicap.ts'
import { type FormatRow, handicapSettings, type Range } from './format-row.ts'
import type { GameInput } from './game-input.ts'
import type { GameMethods, GameSetting } from './game-methods.ts'
import type { GameGap } from './game-result.ts'

const gap = (code: GameGap['code'], ball: BallId | null = null, setting = ''): GameGap => ({ code, ball, setting })

/** What a game as a whole still lacks; empty when it can be computed. Nothing is ever filled in. */
export const gapsOfGame = (input: GameInput, row: FormatRow): GameGap[] => [
  ...gapsOfSides(input, row),
  ...gapsOfSettings(input, row),
]

/** Whether the players' handicaps enter: into the scores, or into the most that a hole counts. */
export const needsHandicaps = ({ measure }: FormatRow, { maximumScore }: GameMethods): boolean =>
  measure.isNet || (measure.isCapped && maximumScore?.kind === 'net-double-bogey')

function gapsOfSettings({ methods }: GameInput, row: FormatRow): GameGap[] {
  const isAsked = (name: GameSetting): boolean => needsHandicaps(row, methods) || !isOfHandicaps(name)
  return row.settings
    .filter(name => methods[name] === null && isAsked(name))
    .map(name => gap('setting missing', null, name))
}

const isOfHandicaps = (name: GameSetting): boolean => handicapSettings.includes(name)

function gapsOfSides({ sides, balls }: GameInput, { sides: shape }: FormatRow): GameGap[] {
  if (sides === null || sides.length === 0) return [gap('no sides')]
  if (!isWithin(sides.length, shape.count)) return [gap('wrong sides')]
  if (sides.some(side => !isWithin(side.length, shape.balls))) return [gap('wrong sides')]
  if (shape.isOneAgainstSeveral && !isOneAgainstSeveral(sides)) return [gap('wrong sides')]
  const wrong = new Set<BallId>()
  const named = new Set<BallId>()
  for (const ball of sides.flat()) {
    if (named.has(ball) || !isWithin(balls.get(ball)?.handicaps.length ?? 0, shape.players)) wrong.add(ball)
    named.add(ball)
  }
  return [...wrong].map(ball => gap('wrong sides', ball))
}

const isOneAgainstSeveral = (sides: readonly (readonly BallId[])[]): boolean =>
  sides.filter(side => side.length === 1).length === 1

const isWithin = (n: number, { min, max }: Range): boolean => n >= min && (max === null || n <= max)

/** What single balls lack: a total goes on without them, a match cannot. */
export function gapsOfBalls({ sides, balls, methods }: GameInput, row: FormatRow): GameGap[] {
  const gaps: GameGap[] = []
  for (const ball of new Set(sides?.flat() ?? [])) {
    const found = balls.get(ball)
    if (found === undefined) continue
    if (found.holes === null) gaps.push(gap('course incomplete', ball))
    if (!needsHandicaps(row, methods)) continue
    // A missing setting is named once, for the game.
    const handicap = ballHandicap(found.handicaps, methods, row.recordedAs)
    if (handicap.kind === 'gap' && handicap.code !== 'setting missing') {
      gaps.push(gap(handicap.code, ball))
    }
  }
  return gaps
}
