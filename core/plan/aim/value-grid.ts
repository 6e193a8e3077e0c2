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
  const leftYd = Math.floor(patch.fromRightYd / stepYd) * stepYd
  const nearYd = Math.floor(patch.fromBeyondYd / stepYd) * stepYd
  const across = Math.ceil((patch.toRightYd - leftYd) / stepYd) + 1
  const along = Math.ceil((patch.toBeyondYd - nearYd) / stepYd) + 1
  const values = new Float64Array(across * along)
  const lost = ground.hasOutOfBounds ? new Float64Array(across * along) : null
  const cornersOf = (row: number): Outcome[] =>
    Array.from({ length: across + 1 }, (_, cell) =>
      ground.outcomeAt(leftYd + (cell - 0.5) * stepYd, nearYd + (row - 0.5) * stepYd),
    )
  let near = cornersOf(0)
  for (let row = 0; row < along; row++) {
    const far = cornersOf(row + 1)
    for (let cell = 0; cell < across; cell++) {
      const [x, y] = [leftYd + cell * stepYd, nearYd + row * stepYd]
      const outcome = ground.outcomeAt(x, y)
      const isWhole = [near[cell], near[cell + 1], far[cell], far[cell + 1]].every(each => each === outcome)
      const parts = isWhole ? 1 : partsOfEdge
      const means = meansIn(ground, x, y, stepYd, parts)
      values[row * across + cell] = means.value
      if (lost !== null) lost[row * across + cell] = means.lost
    }
    near = far
  }
  return { stepYd, leftYd, nearYd, across, along, values, lost }
}

/** A cell that an edge runs through is cut into so many parts each way. */
const partsOfEdge = 4

function meansIn(ground: Ground, x: number, y: number, stepYd: number, parts: number) {
  let [value, lost] = [0, 0]
  for (let part = 0; part < parts * parts; part++) {
    const partX = x + (((part % parts) + 0.5) / parts - 0.5) * stepYd
    const partY = y + ((Math.floor(part / parts) + 0.5) / parts - 0.5) * stepYd
    const outcome = ground.outcomeAt(partX, partY)
    value += ground.valueAt(outcome, partX, partY)
    if (outcome === 'out-of-bounds') lost++
  }
  return { value: value / (parts * parts), lost: lost / (parts * parts) }
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
