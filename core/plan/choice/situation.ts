import { groundOf } from '#core/plan/aim/ground.ts'
import type { HoleSketch, Place } from '#core/plan/aim/sketch.ts'
import type { Stroke } from '#core/plan/aim/surface.ts'
import type { Assumptions } from '#core/plan/assumptions.ts'
import { type Golfer, type GolferClub, spreadWith } from '#core/plan/golfer.ts'
import type { Lie } from '#core/plan/strokes/stroke-table.ts'

/** A golfer over a ball. */
export interface Situation {
  readonly golfer: Golfer
  readonly sketch: HoleSketch
  readonly pin: Place
  /** How far the pin is, along the line of play. */
  readonly distanceYd: number
  readonly lie: Lie
}

/** The ball lies on the line of play. */
export const ballOf = ({ pin, distanceYd }: Situation): Place => ({ rightYd: 0, beyondYd: pin.beyondYd - distanceYd })

/** A stroke with a club, meant to go `lengthYd`. */
export function strokeWith(at: Situation, club: GolferClub, lengthYd: number, assumed: Assumptions): Stroke {
  const { golfer, sketch, pin, lie } = at
  const ball = ballOf(at)
  const { countsShortSide, spreadScale } = assumed
  return {
    ground: groundOf({ sketch, pin, ball, handicapIndex: golfer.handicapIndex, countsShortSide }),
    ball,
    spread: spreadWith(golfer, club, lie, lengthYd, spreadScale),
  }
}
