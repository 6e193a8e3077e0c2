import { type Outcome, outcomes } from './ground.ts'
import type { Place } from './sketch.ts'
import { aimField, type Bell, expectedOn, goodBell, mishitBell, type Stroke } from './surface.ts'
import { cellWeights, reach } from './value-grid.ts'

export type OutcomeShares = Readonly<Record<Outcome, number>>

/** One stroke with one aim: what it is worth and where it ends. */
export interface Judged {
  readonly aim: Place
  /** Strokes to hole out, this one among them. */
  readonly expected: number
  readonly shares: OutcomeShares
}

/** Told of every place that the stroke is taken to finish in, with its share. */
export type Told = (outcome: Outcome, share: number, rightYd: number, beyondYd: number) => void

/** Goes through all places that a stroke can finish in; the shares add to 1. */
export function eachPlace(stroke: Stroke, aim: Place, told: Told): void {
  const { mishitShare } = stroke.spread
  throughBell(stroke, goodBell(stroke, aim), 1 - mishitShare, widestYd, told)
  if (mishitShare > 0) throughBell(stroke, mishitBell(stroke, aim), mishitShare, widestMishitYd, told)
}

function throughBell({ ground }: Stroke, bell: Bell, share: number, mostYd: number, told: Told): void {
  const side = axisOf(bell.middle.rightYd, bell.sideSdYd, mostYd)
  const length = axisOf(bell.middle.beyondYd, bell.lengthSdYd, mostYd)
  for (let row = 0; row < length.weights.length; row++) {
    const y = (length.first + row) * length.stepYd
    const ofRow = share * (length.weights[row] as number)
    for (let cell = 0; cell < side.weights.length; cell++) {
      const x = (side.first + cell) * side.stepYd
      told(ground.outcomeAt(x, y), ofRow * (side.weights[cell] as number), x, y)
    }
  }
}

/** At least so many cells a standard deviation, and none wider than this; of mishits, which are few, wider ones. */
const fineness = 6
const widestYd = 1.5
const widestMishitYd = 4

/** Cells on the marks that every aim of the stroke shares. */
function axisOf(middleYd: number, sdYd: number, mostYd: number) {
  const stepYd = Math.min(mostYd, sdYd / fineness)
  const first = Math.floor((middleYd - reach * sdYd) / stepYd)
  const fromYd = first * stepYd
  const cells = Math.ceil((middleYd + reach * sdYd - fromYd) / stepYd) + 1
  return { stepYd, first, weights: cellWeights(middleYd, sdYd, fromYd, stepYd, cells).weights }
}

export function sharesOf(stroke: Stroke, aim: Place): OutcomeShares {
  const shares = Object.fromEntries(outcomes.map(outcome => [outcome, 0])) as Record<Outcome, number>
  eachPlace(stroke, aim, (outcome, share) => {
    shares[outcome] += share
  })
  return shares
}

/** Cells as large as the scatter allows: a sixth of it, a quarter of a yard to two. */
export const stepFor = ({ spread }: Stroke): number =>
  Math.min(2, Math.max(0.25, Math.min(spread.sideSdYd, spread.lengthSdYd) / 6))

/** Strokes to hole out with one aim. */
export function expectedWith(stroke: Stroke, aim: Place): number {
  const field = aimField(stroke, { rightYd: [aim.rightYd], beyondYd: [aim.beyondYd] }, stepFor(stroke))
  return expectedOn(field, aim)
}

/** How many of these end with a penalty stroke. */
export const penaltyShare = (shares: OutcomeShares): number => shares.water + shares['out-of-bounds']
