import type { Evidence } from '#core/plan/evidence.ts'
import { normalShare } from '#core/plan/normal.ts'

/** A putt is a line with an error in degrees and a length with an error that grows with the putt. */
export interface PuttingModel extends Evidence {
  readonly angleSdDeg: number
  /** Of the length that is meant, which is the putt and `pastYd`. */
  readonly lengthSdShare: number
  /** How far past the hole a putt is meant to go. */
  readonly pastYd: number
  /** A ball that would run farther past than this does not drop. */
  readonly mostPastYd: number
  readonly holeRadiusYd: number
}

/** Two and an eighth inches. */
const holeRadiusYd = 2.125 / 36

/** Source: Broadie 2011, section 3.3, second-hand; the 90-golfer's errors derived from three anchors of it. */
export const puttingModels = {
  tour: {
    confidence: 'second-hand',
    source: 'putting-model',
    angleSdDeg: 1.46,
    lengthSdShare: 0.057,
    pastYd: 0.5,
    mostPastYd: 2 / 3,
    holeRadiusYd,
  },
  golfer90: {
    confidence: 'derived',
    source: 'worked-out',
    angleSdDeg: 2.8,
    lengthSdShare: 0.06,
    pastYd: 0.5,
    mostPastYd: 2 / 3,
    holeRadiusYd,
  },
} as const satisfies Record<string, PuttingModel>

const degrees = 180 / Math.PI

/** The share of putts of this length that drop. */
export function holedShare(model: PuttingModel, feet: number): number {
  const yd = feet / 3
  const lengthSd = model.lengthSdShare * (yd + model.pastYd)
  const onLine = 2 * normalShare((Math.atan(model.holeRadiusYd / yd) * degrees) / model.angleSdDeg) - 1
  const onLength = normalShare((model.mostPastYd - model.pastYd) / lengthSd) - normalShare(-model.pastYd / lengthSd)
  return onLine * onLength
}

/** Average putts to hole out: two, less those that drop, and the third putts; a fourth is left out, as in the source. */
export const puttsFrom = (model: PuttingModel, feet: number): number =>
  2 - holedShare(model, feet) + threePuttShare(model, feet)

/**
 * The share of putts of which the second misses too: over where the first one stops, less those that dropped instead.
 */
export function threePuttShare(model: PuttingModel, feet: number): number {
  const yd = feet / 3
  const lengthSd = model.lengthSdShare * (yd + model.pastYd)
  const holdsDeg = Math.atan(model.holeRadiusYd / yd) * degrees
  const everywhere = {
    angleDeg: reach * model.angleSdDeg,
    fromYd: model.pastYd - reach * lengthSd,
    toYd: model.pastYd + reach * lengthSd,
  }
  const inTheHole = { angleDeg: holdsDeg, fromYd: 0, toYd: model.mostPastYd }
  return missesAfter(model, yd, everywhere) - missesAfter(model, yd, inTheHole)
}

/** In standard deviations; what lies beyond is one in ten thousand. */
const reach = 4
const steps = 40

interface Stops {
  readonly angleDeg: number
  readonly fromYd: number
  readonly toYd: number
}

/** The chance to stop there and miss from there, by the midpoints of slices of equal width. */
function missesAfter(model: PuttingModel, yd: number, { angleDeg, fromYd, toYd }: Stops): number {
  const lengthSd = model.lengthSdShare * (yd + model.pastYd)
  const [wide, long] = [(2 * angleDeg) / steps, (toYd - fromYd) / steps]
  let sum = 0
  for (let across = 0; across < steps; across++) {
    const angle = -angleDeg + (across + 0.5) * wide
    const angleWeight =
      normalShare((angle + wide / 2) / model.angleSdDeg) - normalShare((angle - wide / 2) / model.angleSdDeg)
    for (let along = 0; along < steps; along++) {
      const past = fromYd + (along + 0.5) * long
      const z = (past - model.pastYd) / lengthSd
      const weight = normalShare(z + long / 2 / lengthSd) - normalShare(z - long / 2 / lengthSd)
      const leftYd = Math.hypot(past, (yd + past) * Math.sin(angle / degrees))
      sum += angleWeight * weight * (1 - holedShare(model, Math.max(leftYd * 3, 0.01)))
    }
  }
  return sum
}
