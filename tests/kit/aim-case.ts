import { type BestAim, bestAim } from '#core/plan/aim/best-aim.ts'
import { groundOf } from '#core/plan/aim/ground.ts'
import type { HoleSketch, Place, Shape } from '#core/plan/aim/sketch.ts'
import type { Stroke } from '#core/plan/aim/surface.ts'
import { spreadOf } from '#core/plan/spread/spread-model.ts'
import { skillOf } from '#core/plan/strokes/skill.ts'
import { holeWith } from './plan-holes.ts'

/** A full iron shot at a green. */
export interface AimCase {
  readonly handicapIndex: number
  readonly distanceYd: number
  readonly sketch: HoleSketch
  readonly pin: Place
  readonly scale: number
  readonly countsShortSide: boolean
  readonly mishitShare: number | null
}

/** 150 yards, the pin 9 yards right of the middle and 4 from the edge. */
export const rightPin: AimCase = {
  handicapIndex: 10,
  distanceYd: 150,
  sketch: holeWith(),
  pin: { rightYd: 9, beyondYd: 0 },
  scale: 1,
  countsShortSide: true,
  mishitShare: null,
}

/** Three yards off the right edge of the green, as long as a green and its surroundings. */
export const waterRight: Shape = {
  kind: 'water',
  form: 'box',
  rightYd: 46,
  beyondYd: 0,
  halfWidthYd: 30,
  halfDepthYd: 25,
}

export const bunkerRight: Shape = {
  kind: 'bunker',
  form: 'box',
  rightYd: 21,
  beyondYd: 0,
  halfWidthYd: 8,
  halfDepthYd: 14,
}

export function strokeOf(of: AimCase): Stroke {
  const { sketch, pin, handicapIndex, countsShortSide, distanceYd } = of
  const ball = { rightYd: 0, beyondYd: -distanceYd }
  const ground = groundOf({ sketch, pin, ball, handicapIndex, countsShortSide })
  const skill = skillOf(handicapIndex)
  const spread = spreadOf({ skill, clubClass: 'iron', lie: 'fairway', scale: of.scale }, distanceYd)
  return { ground, ball, spread: { ...spread, mishitShare: of.mishitShare ?? spread.mishitShare } }
}

export const aimOf = (change: Partial<AimCase> = {}): BestAim => {
  const of = { ...rightPin, ...change }
  return bestAim(strokeOf(of), of.sketch, of.pin)
}
