import type { HoleKey } from '#core/card/score.ts'
import { threesOf } from '#core/card/threes.ts'
import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult, SideHole } from '#core/formats/game-result.ts'
import { points } from '#core/formats/measures/points.ts'
import { partMatch } from '#core/formats/part-match.ts'
import { partsResult } from '#core/formats/parts-lines.ts'
import type { PartLine, PartTally } from '#core/formats/parts-result.ts'
import { scheduledHoles, sideHoleOf } from '#core/formats/share-holes.ts'
import { isOutOfPlay } from '#core/formats/side-hole.ts'
import { stablefordPoints } from '#core/formats/stableford-points.ts'
import { type Fraction, fraction, zero } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'

/**
 * Matches of three holes in order of play, each a fresh start and a point, shared when it is level: six over eighteen
 * holes, three over nine. Two sides play them as matches. Three or more, each for themselves, play for the most net
 * Stableford points over the three holes. A three is decided as soon as nothing left of it can change who has the point.
 * Our own game; nobody else publishes it.
 */
export const sixThrees: Contest = resultOf

function resultOf(game: SoundGame): GameResult {
  const [first, second, ...others] = game.sides
  const threes = threesOf(scheduledHoles(game))
  return partsResult(
    game,
    threes.map((holes, place) =>
      first !== undefined && second !== undefined && others.length === 0
        ? partMatch(game, [first, second], { name: 'three', number: place + 1, holes, by: null })
        : threeOf(againstPar(game), place + 1, holes),
    ),
  )
}

/** Points go against each tee's own par: what a tee of another par adds to the strokes is no part of them. */
function againstPar(game: SoundGame): SoundGame {
  const strokes = [...game.strokes].map(([ball, of]) => {
    const added = game.teePar.get(ball)
    const byHole = [...of.byHole].map(([key, n]) => [key, n - (added?.get(key) ?? 0)] as const)
    return [ball, { ...of, byHole: new Map(byHole) }] as const
  })
  return { ...game, measure: points, strokes: new Map(strokes) }
}

function threeOf(game: SoundGame, number: number, holes: readonly HoleKey[]): PartLine {
  const tallies = game.sides.map(side => tallyOf(game, side, holes))
  const isPlayed = holes.some(key => !isOutOfPlay(game, key))
  const shares = isPlayed ? sharesOf(tallies) : tallies.map(() => zero)
  return { name: 'three', number, holes, by: null, match: null, up: 0, tallies, shares }
}

function tallyOf(game: SoundGame, side: readonly BallId[], holes: readonly HoleKey[]): PartTally {
  const ranges = holes.map(key => rangeOf(game, side, key))
  return {
    side,
    points: ranges.reduce((sum, { least }) => sum + least, 0),
    mostPossible: ranges.reduce((sum, { most }) => sum + most, 0),
  }
}

/** What a hole gives at least and at most; a hole that is not written may still be holed in one. */
function rangeOf(game: SoundGame, side: readonly BallId[], key: HoleKey): { least: number; most: number } {
  if (isOutOfPlay(game, key)) return { least: 0, most: 0 }
  const hole: SideHole = sideHoleOf(game, side, key)
  if (hole.kind === 'value') return { least: hole.value, most: hole.value }
  if (hole.kind === 'open') return { least: 0, most: Math.max(...side.map(ball => inOneStroke(game, ball, key))) }
  if (hole.kind !== 'two') return { least: 0, most: 0 }
  const values = hole.values.map(value => value ?? 0)
  return { least: Math.min(...values), most: Math.max(...values) }
}

function inOneStroke(game: SoundGame, ball: BallId, key: HoleKey): number {
  const par = game.balls.get(ball)?.holes.get(key)?.par ?? 0
  return stablefordPoints(par, game.strokes.get(ball)?.byHole.get(key) ?? 0, 1)
}

/** The point goes to whoever nobody can reach any more; level ones share it once nothing is left to come. */
function sharesOf(tallies: readonly PartTally[]): Fraction[] | null {
  const ahead = tallies.findIndex((tally, at) =>
    tallies.every((other, place) => place === at || tally.points > other.mostPossible),
  )
  if (ahead !== -1) return tallies.map((_, at) => (at === ahead ? fraction(1) : zero))
  if (tallies.some(({ points: least, mostPossible }) => least < mostPossible)) return null
  const most = Math.max(...tallies.map(tally => tally.points))
  const level = tallies.filter(tally => tally.points === most).length
  return tallies.map(tally => (tally.points === most ? fraction(1, level) : zero))
}
