import type { TotalLine } from './game-result.ts'
import type { MeasureUnit } from './parts.ts'

export type UnplacedLine = Omit<TotalLine, 'place' | 'isTied'>

/** A line and where it stands; the line is made with its place only once that is known. */
export interface Placed extends Pick<TotalLine, 'place' | 'isTied'> {
  readonly line: UnplacedLine
}

/**
 * The lines in order with their places; equal ones share a place. Points and holes go by the sum. Strokes go against par
 * while a round is under way, so that three holes do not lead eighteen, and by the sum once every round is finished. A
 * side disqualified comes last, no return before it and a line without a hole before that, all without a place.
 */
export function placeLines(lines: readonly UnplacedLine[], unit: MeasureUnit): Placed[] {
  const isRunning = lines.some(line => !line.isFinished && isInPlay(line))
  const figureOf = (line: UnplacedLine): number => {
    if (unit !== 'strokes') return -(line.total ?? 0)
    return (isRunning ? line.overPar : line.total) ?? 0
  }
  const placed = lines.filter(hasPlace).sort((a, b) => figureOf(a) - figureOf(b))
  const figures = placed.map(figureOf)
  return [
    ...placed.map((line, row) => placeLine(line, figures, row)),
    ...lines.filter(line => isInPlay(line) && !hasPlace(line)).map(withoutPlace),
    ...lines.filter(line => line.isNoReturn && line.disqualified === null).map(withoutPlace),
    ...lines.filter(line => line.disqualified !== null).map(withoutPlace),
  ]
}

const isInPlay = (line: UnplacedLine): boolean => !line.isNoReturn && line.disqualified === null

const hasPlace = (line: UnplacedLine): boolean => isInPlay(line) && line.through > 0

const withoutPlace = (line: UnplacedLine): Placed => ({ line, place: null, isTied: false })

/** The figures ascend, so that equal ones are neighbours. */
function placeLine(line: UnplacedLine, figures: readonly number[], row: number): Placed {
  const own = figures[row]
  let first = row
  while (first > 0 && figures[first - 1] === own) first -= 1
  return { line, place: first + 1, isTied: first < row || figures[row + 1] === own }
}

/** The line itself where it had that place before. */
export const lineOfPlaced = ({ line, place, isTied }: Placed): TotalLine =>
  isAt(line, place, isTied) ? line : { ...line, place, isTied }

const isAt = (line: UnplacedLine & Partial<TotalLine>, place: number | null, isTied: boolean): line is TotalLine =>
  line.place === place && line.isTied === isTied
