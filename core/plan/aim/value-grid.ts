import { normalShare } from '#core/plan/normal.ts'
import type { Ground, Outcome } from './ground.ts'

/** A patch of a hole in square cells, with what a ball is worth in each. */
export interface ValueGrid {
  readonly stepYd: number
  readonly leftYd: number
  readonly nearYd: number
  readonly across: number
  readonly along: number
  /** Row by row from the near left corner. */
  readonly values: Float64Array
  /** How much of each cell is out of bounds; null on a hole without. */
  readonly lost: Float64Array | null
}

export interface Patch {
  readonly fromRightYd: number
  readonly toRightYd: number
  readonly fromBeyondYd: number
  readonly toBeyondYd: number
}

/** The cells of every grid of one step lie on the same marks, counted from the line of play: aims compare like with like. */
export function valueGrid(ground: Ground, patch: Patch, stepYd: number): ValueGrid {
  // Whole cells from the line of play: a place and its mirror image are then the same number but for the sign.
  const [left, first] = [Math.floor(patch.fromRightYd / stepYd), Math.floor(patch.fromBeyondYd / stepYd)]
  const [leftYd, nearYd] = [left * stepYd, first * stepYd]
  const across = Math.ceil((patch.toRightYd - leftYd) / stepYd) + 1
  const along = Math.ceil((patch.toBeyondYd - nearYd) / stepYd) + 1
  const values = new Float64Array(across * along)
  const lost = ground.hasOutOfBounds ? new Float64Array(across * along) : null
  const cornersOf = (row: number): Outcome[] =>
    Array.from({ length: across + 1 }, (_, cell) =>
      ground.outcomeAt((left + cell - 0.5) * stepYd, (first + row - 0.5) * stepYd),
    )
  let near = cornersOf(0)
  for (let row = 0; row < along; row++) {
    const far = cornersOf(row + 1)
    const y = (first + row) * stepYd
    for (let cell = 0; cell < across; cell++) {
      const x = (left + cell) * stepYd
      const outcome = ground.outcomeAt(x, y)
      const at = row * across + cell
      if (near[cell] === outcome && near[cell + 1] === outcome && far[cell] === outcome && far[cell + 1] === outcome) {
        values[at] = ground.valueAt(outcome, x, y)
        if (lost !== null && outcome === 'out-of-bounds') lost[at] = 1
      } else {
        const means = meansOnEdge(ground, left + cell, first + row, stepYd)
        values[at] = means.value
        if (lost !== null) lost[at] = means.lost
      }
    }
    near = far
  }
  return { stepYd, leftYd, nearYd, across, along, values, lost }
}

/**
 * A cell that an edge runs through is asked in sixteen places, no two of a half level across or beyond, so that an edge along
 * the hole or across it is told to a sixteenth or an eighth of the cell. The right half mirrors the left.
 */
const edgePlaces = [0, 4, 2, 6, 1, 5, 3, 7].flatMap((level, at) => {
  const [across, beyond] = [(at + 0.5) / 16 - 0.5, (level + 0.5) / 8 - 0.5]
  return [
    { across, beyond },
    { across: -across, beyond },
  ]
})

/** Of a cell that lies so many cells right of the line of play and beyond the green. */
function meansOnEdge(ground: Ground, right: number, beyond: number, stepYd: number) {
  let value = 0
  let lost = 0
  for (const place of edgePlaces) {
    const [x, y] = [(right + place.across) * stepYd, (beyond + place.beyond) * stepYd]
    const outcome = ground.outcomeAt(x, y)
    value += ground.valueAt(outcome, x, y)
    if (outcome === 'out-of-bounds') lost++
  }
  return { value: value / edgePlaces.length, lost: lost / edgePlaces.length }
}

/** Beyond this many standard deviations a shot is not followed; the rest of the weight is shared out. */
export const reach = 3.5

/** The cells from `first` on that a normal reaches, and its share in each; they add to 1. */
export interface CellWeights {
  readonly first: number
  readonly weights: Float64Array
}

/** A cell that the reach ends in the middle of belongs to both sides alike. */
const half = 0.5 + 1e-9

export function cellWeights(
  middleYd: number,
  sdYd: number,
  fromYd: number,
  stepYd: number,
  cells: number,
): CellWeights {
  const place = (yd: number): number => (yd - fromYd) / stepYd
  const first = Math.max(0, Math.min(cells - 1, Math.ceil(place(middleYd - reach * sdYd) - half)))
  const last = Math.max(first, Math.min(cells - 1, Math.floor(place(middleYd + reach * sdYd) + half)))
  const weights = new Float64Array(last - first + 1)
  let sum = 0
  let below = normalShare((fromYd + (first - 0.5) * stepYd - middleYd) / sdYd)
  for (let at = 0; at < weights.length; at++) {
    const upTo = normalShare((fromYd + (first + at + 0.5) * stepYd - middleYd) / sdYd)
    weights[at] = upTo - below
    sum += upTo - below
    below = upTo
  }
  for (let at = 0; at < weights.length; at++) weights[at] = (weights[at] as number) / (sum || 1)
  return { first, weights }
}

/** Each column weighed along the line of play: one value a column. */
export function columnsOf(grid: ValueGrid, of: Float64Array, { first, weights }: CellWeights): Float64Array {
  const columns = new Float64Array(grid.across)
  for (let at = 0; at < weights.length; at++) {
    const weight = weights[at] as number
    const row = (first + at) * grid.across
    for (let cell = 0; cell < grid.across; cell++)
      columns[cell] = (columns[cell] as number) + weight * (of[row + cell] as number)
  }
  return columns
}

export function weighed(columns: Float64Array, { first, weights }: CellWeights): number {
  let sum = 0
  for (let at = 0; at < weights.length; at++) sum += (weights[at] as number) * (columns[first + at] as number)
  return sum
}
