import type { PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import { isEmptySketch } from '#core/outing/sketch.ts'
import { type HoleAdvice, holeAdvice, type KnownHole } from '#core/plan/advice/hole-advice.ts'
import { toYards } from '#core/plan/advice/in-unit.ts'
import { type HoleWorth, worthOf } from '#core/plan/advice/round-advice.ts'
import { type HoleSketch, middleOf, openHole } from '#core/plan/aim/sketch.ts'
import { sketchInYards } from '#core/plan/aim/sketch-of-course.ts'
import { usualAssumptions } from '#core/plan/assumptions.ts'
import { type Situation, strokeWith } from '#core/plan/choice/situation.ts'
import type { Golfer } from '#core/plan/golfer.ts'
import { type TenStrokes, tenStrokes } from '#core/plan/picture/ten-strokes.ts'
import type { Plan } from '#core/plan/plan.ts'
import type { BallId } from '#core/values/ids.ts'
import { holeDrawn } from '../../sketch/sketch-view.ts'
import { holeAhead } from './own-plan.ts'

/** What the numbers say of one hole before it is played; `worth` is null where no ratings are chosen or a length is missing. */
export interface HoleNumbers {
  readonly known: KnownHole
  readonly advice: HoleAdvice
  readonly worth: HoleWorth | null
  readonly pictures: readonly ShotPicture[]
}

/** Ten of a shot that the plan asks for; `at` what it is meant for. */
export interface ShotPicture {
  readonly at: 'tee' | 'green'
  readonly picture: TenStrokes
  readonly aimRightYd: number
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
  const advice = holeAdvice(golfer, known, favouriteYd)
  const worth = worthOfHole(outing, ball, at, plan, golfer)
  return { known, advice, worth, pictures: picturesOf(golfer, known, advice) }
}

/** Of the tee shot, and of the shot at the green where the plan has one. */
function picturesOf(golfer: Golfer, { sketch, lengthYd }: KnownHole, { tee, next }: HoleAdvice): ShotPicture[] {
  const drawn = sketch ?? openHole(lengthYd)
  const onTee: Situation = { golfer, sketch: drawn, pin: middleOf(drawn.green), distanceYd: lengthYd, lie: 'tee' }
  const pictures: ShotPicture[] = []
  if (tee !== null) {
    const stroke = strokeWith(onTee, tee.club, tee.totalYd, usualAssumptions)
    const at = next.kind === 'none' && tee.totalYd >= lengthYd ? 'green' : 'tee'
    pictures.push({ at, picture: tenStrokes(stroke, tee.aim), aimRightYd: tee.aim.rightYd })
  }
  if (next.kind === 'green') {
    const { club, leavesYd, aim } = next
    const from: Situation = { ...onTee, distanceYd: leavesYd, lie: 'fairway' }
    const picture = tenStrokes(strokeWith(from, club, leavesYd, usualAssumptions), aim.best.aim)
    pictures.push({ at: 'green', picture, aimRightYd: aim.best.aim.rightYd })
  }
  return pictures
}

function knownHole(outing: Outing, ball: BallId | null, at: PlayedHole, plan: Plan): KnownHole | null {
  const ahead = holeAhead(outing, ball, at, plan)
  if (ahead === null || ahead.length === null) return null
  const lengthYd = toYards(ahead.length, plan.unit)
  return { hole: at.hole, par: ahead.par, lengthYd, sketch: sketchOf(outing, ball, at.hole) }
}

function sketchOf(outing: Outing, ball: BallId | null, hole: number): HoleSketch | null {
  const drawn = outing.sketches.get(hole)
  return !drawn || isEmptySketch(drawn) ? null : sketchInYards(drawn, holeDrawn(outing, ball, hole))
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
