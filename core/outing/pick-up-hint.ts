import { type HoleKey, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { BallStrokes, GameResult, MatchLine } from '#core/formats/game-result.ts'
import type { Measure } from '#core/formats/parts.ts'
import { formatTable } from '#core/formats/table.ts'
import type { BallId } from '#core/values/ids.ts'
import { courseHoleOf } from './game-input-of.ts'
import type { Game, Outing } from './outing.ts'
import type { Results } from './results.ts'

/** No published maximum is higher: beyond it a score that still counts is no reason to look further. */
const mostStrokes = 30

/**
 * The lowest score of a ball on a hole that is worth no more than picking up, in every game that it plays: after one
 * stroke less, the ball may be picked up. Null where a game counts every stroke (stroke play, maximum score, an order of
 * all scores), where it takes scores that are not in yet, and where nothing hangs on the hole at all.
 * Source: Rules of Golf, rules 21.1 and 21.3 (a hole may be ended once it can earn nothing), 3.2 (match play); R&A and
 * USGA; 2019 and 2023.
 */
export function pickUpFrom(outing: Outing, results: Results, ball: BallId, at: PlayedHole): number | null {
  const games = outing.games.filter(({ sides }) => sides?.some(side => side.includes(ball)))
  const found = games.map(game => worthlessFrom(outing, game, results.games.get(game.id), ball, at))
  const highest = highestOf(found)
  return highest === null || highest < 2 ? null : highest
}

/** In one game: 0 where any score is worthless, null where none is. */
function worthlessFrom(
  outing: Outing,
  game: Game,
  result: GameResult | undefined,
  ball: BallId,
  at: PlayedHole,
): number | null {
  const key = holeKey(at)
  switch (result?.kind) {
    case 'total':
      return pointlessFrom(outing, formatTable[result.format].measure, result.strokes.get(ball), ball, at)
    case 'match':
      return highestOf(
        result.matches.flatMap(match => (isIn(match, ball) ? [lostFrom(outing, game, match, ball, key)] : [])),
      )
    case 'parts':
      return highestOf(
        result.parts
          .filter(({ holes }) => holes.includes(key))
          .map(({ match }) => (match ? (isIn(match, ball) ? lostFrom(outing, game, match, ball, key) : 0) : null)),
      )
    case 'shares':
      return result.unit === 'skins' ? noSkinFrom(game, result, ball, key) : null
    default:
      return null
  }
}

const isIn = ({ sides }: MatchLine, ball: BallId): boolean => sides.flat().includes(ball)

/** The highest of all; null where one of them is. */
const highestOf = (found: readonly (number | null)[]): number | null =>
  found.reduce<number | null>((most, each) => (most === null || each === null ? null : Math.max(most, each)), 0)

/** Points and par/bogey: the first score that earns what a pick-up earns. */
function pointlessFrom(
  outing: Outing,
  measure: Measure,
  strokes: BallStrokes | undefined,
  ball: BallId,
  at: PlayedHole,
): number | null {
  const found = outing.balls.get(ball)
  const par = found && courseHoleOf(outing, found, at)?.par
  if (measure.unit === 'strokes' || par === undefined || strokes === undefined) return null
  const hole = { par, strokes: measure.isNet ? (strokes.byHole.get(holeKey(at)) ?? 0) : 0, maximum: null }
  const nothing = measure.valueOf(hole, null)
  for (let gross = 1; gross <= mostStrokes; gross++) {
    if (measure.valueOf(hole, gross) === nothing) return gross
  }
  return null
}

/** Better-ball and single matches: the first score that loses to one that the other side has already. */
function lostFrom(outing: Outing, game: Game, match: MatchLine, ball: BallId, key: HoleKey): number | null {
  const hole = match.holes.find(each => each.key === key)
  if (match.state.result !== null || hole?.reason === 'conceded' || hole?.reason === 'agreed') return 0
  const own = match.sides.find(side => side.includes(ball)) ?? []
  const others = match.sides.find(side => side !== own) ?? []
  if (countsAll(game) && Math.max(own.length, others.length) > 1) return null
  const nets = others.flatMap(other => {
    const found = outing.cards.get(other)?.scores.get(key)
    if (found?.kind !== 'one' || typeof found.score !== 'number') return []
    return [found.score - strokesOn(match, other, key)]
  })
  return nets.length === 0 ? null : Math.min(...nets) + strokesOn(match, ball, key) + 1
}

/** Where the balls of a side are added, a lost ball is not a lost hole. */
const countsAll = ({ format }: Game): boolean => format === 'total-of-two-match'

const strokesOn = ({ strokes }: MatchLine, ball: BallId, key: HoleKey): number =>
  strokes.get(ball)?.byHole.get(key) ?? 0

/** The first score that neither wins the skin nor keeps another from it. */
function noSkinFrom(
  game: Game,
  { holes, strokes, format }: Extract<GameResult, { kind: 'shares' }>,
  ball: BallId,
  key: HoleKey,
): number | null {
  const hole = holes.find(each => each.key === key)
  const values = (hole?.values ?? []).flatMap((value, place) =>
    value.kind === 'value' && !game.sides?.[place]?.includes(ball) ? [value.value] : [],
  )
  if (values.length === 0) return null
  const given = formatTable[format].measure.isNet ? (strokes.get(ball)?.byHole.get(key) ?? 0) : 0
  return Math.min(...values) + given + 1
}
