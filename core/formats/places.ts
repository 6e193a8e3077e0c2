import type { TotalLine } from './game-result.ts'

export type UnplacedLine = Omit<TotalLine, 'place' | 'isTied'>

/**
 * The lines in order with their places; equal ones share a place. Points go by the sum. Strokes go against par while a
 * round is under way, so that three holes do not lead eighteen, and by the sum once every round is finished. No return
 * comes last and a line without a hole before it, both without a place.
 */
export function placeLines(lines: readonly UnplacedLine[], unit: 'strokes' | 'points'): TotalLine[] {
  const isRunning = lines.some(line => !line.isFinished && !line.isNoReturn)
  const figureOf = (line: UnplacedLine): number => {
    if (unit === 'points') return -(line.total ?? 0)
    return (isRunning ? line.overPar : line.total) ?? 0
  }
  const placed = lines.filter(hasPlace).sort((a, b) => figureOf(a) - figureOf(b))
  const figures = placed.map(figureOf)
  return [
    ...placed.map((line, row) => placeLine(line, figures, row)),
    ...lines.filter(line => !hasPlace(line) && !line.isNoReturn).map(withoutPlace),
    ...lines.filter(line => line.isNoReturn).map(withoutPlace),
  ]
}

const hasPlace = (line: UnplacedLine): boolean => !line.isNoReturn && line.through > 0

const withoutPlace = (line: UnplacedLine): TotalLine => ({ ...line, place: null, isTied: false })

function placeLine(line: UnplacedLine, figures: readonly number[], row: number): TotalLine {
  const own = figures[row] ?? 0
  return {
    ...line,
    place: figures.indexOf(own) + 1,
    isTied: figures.filter(each => each === own).length > 1,
  }
}
