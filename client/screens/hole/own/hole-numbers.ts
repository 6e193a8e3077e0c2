import type { PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import { isEmptySketch } from '#core/outing/sketch.ts'
import { type HoleAdvice, holeAdvice, type KnownHole } from '#core/plan/advice/hole-advice.ts'
import { toYards } from '#core/plan/advice/in-unit.ts'
import { type HoleWorth, worthOf } from '#core/plan/advice/round-advice.ts'
import { type HoleSketch, openHole } from '#core/plan/aim/sketch.ts'
import { sketchInYards } from '#core/plan/aim/sketch-of-course.ts'
import type { Golfer } from '#core/plan/golfer.ts'
import type { Plan } from '#core/plan/plan.ts'
import type { BallId } from '#core/values/ids.ts'
import { holeDrawn } from '../../sketch/sketch-view.ts'
import { holeAhead } from './own-plan.ts'

/** What the numbers say of one hole before it is played; `worth` is null where no ratings are chosen or a length is missing. */
export interface HoleNumbers {
  readonly known: KnownHole
  readonly advice: HoleAdvice
  readonly worth: HoleWorth | null
}

/** Null where nobody typed the length in. */
export function numbersOfHole(
  outing: Outing,
  ball: BallId | null,
  at: PlayedHole,
  plan: Plan,
  golfer: Golfer,
): HoleNumbers | null {
  const known = knownHole(outing, ball, at, plan)
  if (known === null) return null
  const favouriteYd = plan.favourite === null ? null : toYards(plan.favourite, plan.unit)
  return { known, advice: holeAdvice(golfer, known, favouriteYd), worth: worthOfHole(outing, ball, at, plan, golfer) }
}

function knownHole(outing: Outing, ball: BallId | null, at: PlayedHole, plan: Plan): KnownHole | null {
  const ahead = holeAhead(outing, ball, at, plan)
  if (ahead === null || ahead.length === null) return null
  const lengthYd = toYards(ahead.length, plan.unit)
  return { hole: at.hole, par: ahead.par, lengthYd, sketch: sketchOf(outing, ball, at.hole, lengthYd) }
}

/** Who drew no fairway has not said that there is none. */
function sketchOf(outing: Outing, ball: BallId | null, hole: number, lengthYd: number): HoleSketch | null {
  const drawn = outing.sketches.get(hole)
  if (!drawn || isEmptySketch(drawn)) return null
  const { green, shapes } = sketchInYards(drawn, holeDrawn(outing, ball, hole))
  const hasFairway = shapes.some(({ kind }) => kind === 'fairway')
  return { green, shapes: hasFairway ? shapes : [...shapes, ...openHole(lengthYd).shapes] }
}

/** A hole is worth its share of the whole course. */
function worthOfHole(
  outing: Outing,
  ball: BallId | null,
  at: PlayedHole,
  plan: Plan,
  golfer: Golfer,
): HoleWorth | null {
  if (plan.ratings === null) return null
  const holes = [...outing.holes.keys()].sort((a, b) => a - b)
  const all = holes.map(hole => knownHole(outing, ball, { hole, lap: 1 }, plan))
  const known = all.filter(each => each !== null)
  if (known.length < all.length) return null
  return worthOf(golfer, known, null)[holes.indexOf(at.hole)] ?? null
}
