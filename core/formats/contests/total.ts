import type { HoleKey } from '#core/card/score.ts'
import type { Contest, InputHole, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult, SideHole } from '#core/formats/game-result.ts'
import { placeLines, type UnplacedLine } from '#core/formats/places.ts'
import { isUnsettled, isWritten, sideHoleOf } from '#core/formats/side-hole.ts'
import type { BallId } from '#core/values/ids.ts'

/** Every side adds up its scheduled holes; the table is in order of the sums. */
export const total: Contest = { strokes: 'own', resultOf }

function resultOf(game: SoundGame): GameResult {
  return {
    kind: 'total',
    game: game.game,
    format: game.format,
    unit: game.measure.unit,
    strokes: game.strokes,
    gaps: game.gaps,
    lines: placeLines(
      game.sides.map(side => lineOf(game, side)),
      game.measure.unit,
    ),
  }
}

function lineOf(game: SoundGame, side: readonly BallId[]): UnplacedLine {
  const holes = scheduledHoles(game, side)
  const byHole = new Map(holes.map(({ key }) => [key, sideHoleOf(game, side, key)]))
  const counted = holes.flatMap(hole => countedValue(hole, byHole))
  const isStrokes = game.measure.unit === 'strokes'
  const isNoReturn = isStrokes && [...byHole.values()].some(({ kind }) => kind === 'none')
  return {
    side,
    byHole,
    total: isNoReturn ? null : sumOf(counted.map(({ value }) => value)),
    overPar: isNoReturn || !isStrokes ? null : sumOf(counted.map(({ value, par }) => value - par)),
    through: holes.filter(({ key }) => isWritten(game, side, key)).length,
    isFinished: [...byHole.values()].every(({ kind }) => kind === 'value' || kind === 'none'),
    unsettled: holes.map(({ key }) => key).filter(key => isUnsettled(game, side, key)),
    isNoReturn,
  }
}

const scheduledHoles = (game: SoundGame, [first]: readonly BallId[]): InputHole[] =>
  (first === undefined ? [] : (game.balls.get(first)?.order ?? [])).filter(({ isScheduled }) => isScheduled)

function countedValue(
  { key, par }: InputHole,
  byHole: ReadonlyMap<HoleKey, SideHole>,
): { value: number; par: number }[] {
  const found = byHole.get(key)
  return found?.kind === 'value' ? [{ value: found.value, par }] : []
}

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0)
