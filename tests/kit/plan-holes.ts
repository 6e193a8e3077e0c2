import { type HoleSketch, openHole, type Shape, usualGround } from '#core/plan/aim/sketch.ts'
import type { Situation } from '#core/plan/choice/situation.ts'
import type { Golfer } from '#core/plan/golfer.ts'
import { usualGolfer } from './usual-golfer.ts'

const green = usualGround.green

/** Ground of one kind along the whole hole, on the right from `fromYd` on; on the left where that is below 0. */
export const along = (kind: Shape['kind'], fromYd: number): Shape => ({
  kind,
  form: 'box',
  rightYd: fromYd + Math.sign(fromYd) * 100,
  beyondYd: -300,
  halfWidthYd: 100,
  halfDepthYd: 500,
})

export const fairwayOf = (widthYd: number): Shape => ({
  kind: 'fairway',
  form: 'box',
  rightYd: 0,
  beyondYd: -320,
  halfWidthYd: widthYd / 2,
  halfDepthYd: 300,
})

export const holeWith = (...shapes: readonly Shape[]): HoleSketch => ({ green, shapes })

/** Water 16 to 34 yards short of the pin, right across. */
export const waterShort: Shape = {
  kind: 'water',
  form: 'box',
  rightYd: 0,
  beyondYd: -25,
  halfWidthYd: 60,
  halfDepthYd: 9,
}

export const situationAt = (
  golfer: Golfer,
  distanceYd: number,
  sketch: HoleSketch = openHole(400),
  lie: Situation['lie'] = 'fairway',
): Situation => ({ golfer, sketch, pin: { rightYd: 0, beyondYd: 0 }, distanceYd, lie })

/** A golfer who owns a carry of so much off the ground, whatever the Index says. */
export function golferCarrying(handicapIndex: number, carryYd: number): Golfer {
  const usual = usualGolfer(handicapIndex, 'men')
  const clubs = usual.clubs.map(each => (each.club === 'wood-3' ? { ...each, carryYd } : each))
  return { ...usual, clubs }
}
