import { mishits, type Spread } from '#core/plan/spread/spread-model.ts'
import type { Ground } from './ground.ts'
import type { Place } from './sketch.ts'
import { cellWeights, columnsOf, type Patch, reach, type ValueGrid, valueGrid, weighed } from './value-grid.ts'

/** A stroke from a ball at a ground: how it scatters about what it is meant for. */
export interface Stroke {
  readonly ground: Ground
  readonly ball: Place
  readonly spread: Spread
}

/** The aims of a patch: from left to right and from near to far. */
export interface Aims {
  readonly rightYd: readonly number[]
  readonly beyondYd: readonly number[]
}

/** What a stroke costs for every aim: `expected[row][column]` for the aim at `beyondYd[row]` and `rightYd[column]`. */
export interface AimSurface extends Aims {
  readonly expected: readonly (readonly number[])[]
}

/** A stroke with the ground laid out in cells for all the aims of a patch. */
export interface AimField {
  readonly stroke: Stroke
  readonly grid: ValueGrid
  /** Where the mishits of all these aims finish, weighed along the line of play already. */
  readonly missed: {
    readonly grid: ValueGrid
    readonly values: Float64Array
    readonly lost: Float64Array | null
  } | null
}

/**
 * Strokes to hole out for a stroke that is played again, with a penalty, whenever it is lost. `kept` is the mean of what
 * comes after over the shots that are not lost. Source: Rules of Golf 2023, rule 18.1; the closed form is ours.
 */
export const strokeAndDistance = (kept: number, lostShare: number): number =>
  (1 + kept + lostShare) / (1 - Math.min(lostShare, mostLost))

/** Nobody goes on like that. */
const mostLost = 0.95

/** A normal in two directions, side and length apart. */
export interface Bell {
  readonly middle: Place
  readonly sideSdYd: number
  readonly lengthSdYd: number
}

/** Where good shots with an aim finish, and where the mishit ones do. */
export const goodBell = ({ spread }: Stroke, { rightYd, beyondYd }: Place): Bell => ({
  middle: { rightYd: rightYd + spread.sideBiasYd, beyondYd },
  sideSdYd: spread.sideSdYd,
  lengthSdYd: spread.lengthSdYd,
})

export function mishitBell({ ball, spread }: Stroke, { rightYd, beyondYd }: Place): Bell {
  const lengthYd = beyondYd - ball.beyondYd
  return {
    middle: {
      rightYd: rightYd + spread.sideBiasYd,
      beyondYd: ball.beyondYd + lengthYd * mishits.lengthMeanShare,
    },
    sideSdYd: spread.sideSdYd * mishits.sideFactor,
    lengthSdYd: Math.max(0.5, lengthYd * mishits.lengthSdShare),
  }
}

const patchAround = (left: Bell, right: Bell, near: Bell, far: Bell): Patch => ({
  fromRightYd: left.middle.rightYd - reach * left.sideSdYd,
  toRightYd: right.middle.rightYd + reach * right.sideSdYd,
  fromBeyondYd: near.middle.beyondYd - reach * near.lengthSdYd,
  toBeyondYd: far.middle.beyondYd + reach * far.lengthSdYd,
})

/** Cells of mishits, which scatter wide: a fifth of that. */
const mishitStepYd = ({ sideSdYd, lengthSdYd }: Bell): number => Math.max(0.5, Math.min(sideSdYd, lengthSdYd) / 5)

/** The scatter is taken the same for all aims, and the mishits for those of the middle row. */
export function aimField(stroke: Stroke, { rightYd, beyondYd }: Aims, stepYd: number): AimField {
  const [left = 0, right = 0] = [rightYd[0], rightYd.at(-1)]
  const [near = 0, far = 0] = [beyondYd[0], beyondYd.at(-1)]
  const corner = (x: number, y: number): Place => ({ rightYd: x, beyondYd: y })
  const [one, other] = [goodBell(stroke, corner(left, near)), goodBell(stroke, corner(right, far))]
  const grid = valueGrid(stroke.ground, patchAround(one, other, one, other), stepYd)
  if (stroke.spread.mishitShare === 0) return { stroke, grid, missed: null }
  const middle = (near + far) / 2
  const [missLeft, missRight] = [mishitBell(stroke, corner(left, middle)), mishitBell(stroke, corner(right, middle))]
  const missGrid = valueGrid(
    stroke.ground,
    patchAround(missLeft, missRight, missLeft, missLeft),
    mishitStepYd(missLeft),
  )
  const along = lengthWeights(missGrid, missLeft)
  const missed = {
    grid: missGrid,
    values: columnsOf(missGrid, missGrid.values, along),
    lost: missGrid.lost && columnsOf(missGrid, missGrid.lost, along),
  }
  return { stroke, grid, missed }
}

const lengthWeights = ({ nearYd, stepYd, along }: ValueGrid, { middle, lengthSdYd }: Bell) =>
  cellWeights(middle.beyondYd, lengthSdYd, nearYd, stepYd, along)

const sideWeights = ({ leftYd, stepYd, across }: ValueGrid, { middle, sideSdYd }: Bell) =>
  cellWeights(middle.rightYd, sideSdYd, leftYd, stepYd, across)

/** The whole surface: length first, once a row, then side. The aims lie in the patch of the field. */
export function surfaceOn(field: AimField, { rightYd, beyondYd }: Aims): AimSurface {
  const { stroke, grid } = field
  const across = rightYd.map(right => sideWeights(grid, goodBell(stroke, { rightYd: right, beyondYd: 0 })))
  const missed = rightYd.map(right => missedOf(field, right))
  const share = stroke.spread.mishitShare
  const expected = beyondYd.map(beyond => {
    const along = lengthWeights(grid, goodBell(stroke, { rightYd: 0, beyondYd: beyond }))
    const values = columnsOf(grid, grid.values, along)
    const lost = grid.lost && columnsOf(grid, grid.lost, along)
    return across.map((weights, at) => {
      const { value = 0, lost: missedLost = 0 } = missed[at] ?? {}
      const kept = (1 - share) * weighed(values, weights) + share * value
      return strokeAndDistance(kept, lost === null ? 0 : (1 - share) * weighed(lost, weights) + share * missedLost)
    })
  })
  return { rightYd, beyondYd, expected }
}

function missedOf({ stroke, missed }: AimField, rightYd: number): { readonly value: number; readonly lost: number } {
  if (missed === null) return { value: 0, lost: 0 }
  const weights = sideWeights(missed.grid, mishitBell(stroke, { rightYd, beyondYd: 0 }))
  return { value: weighed(missed.values, weights), lost: missed.lost === null ? 0 : weighed(missed.lost, weights) }
}

export const expectedOn = (field: AimField, { rightYd, beyondYd }: Place): number =>
  surfaceOn(field, { rightYd: [rightYd], beyondYd: [beyondYd] }).expected[0]?.[0] ?? Number.NaN
