import { type Measured, measuredOf, ownCarry, ownSd } from '#core/plan/spread/own-figures.ts'
import { classOf, spreadOf } from '#core/plan/spread/spread-model.ts'
import { skillOf } from '#core/plan/strokes/skill.ts'
import { type LengthUnit, yardsPerUnit } from '#core/values/length.ts'
import { type Club, isForTheTeeAlone } from './clubs.ts'
import type { OwnShots } from './golfer.ts'
import type { Plan } from './plan.ts'

/** What a player says of how a club's carries fall: their standard deviation, in the player's unit, from so many shots. */
export interface SaidSpread {
  readonly spread: number
  readonly shots: number
}

export const noShots: Measured = measuredOf([])

/** Two sets of shots as one. */
export function bothMeasured(a: Measured, b: Measured): Measured {
  const shots = a.shots + b.shots
  if (shots === 0) return noShots
  const apart = b.mean - a.mean
  return {
    shots,
    mean: (a.mean * a.shots + b.mean * b.shots) / shots,
    squares: a.squares + b.squares + (apart ** 2 * a.shots * b.shots) / shots,
  }
}

/** A spread that was typed stands for shots about the number that was typed with it. */
export const measuredFrom = (mean: number, { spread, shots }: SaidSpread): Measured => ({
  shots,
  mean,
  squares: spread ** 2 * Math.max(0, shots - 1),
})

/** The standard deviation of the shots themselves; null of fewer than two. */
export const spreadOfShots = ({ shots, squares }: Measured): number | null =>
  shots < 2 ? null : Math.sqrt(squares / (shots - 1))

/** Of whom the usual spread is taken until own shots say more: a bag knows no Index. Source: our own. */
const usualIndex = 18

/**
 * A carry moved by own shots from what it would be without them, in the player's unit and not rounded. Source: our own,
 * standard rules of Bayes; see `spread/own-figures.ts`.
 */
export const carryWithShots = (club: Club, usual: number, measured: Measured, unit: LengthUnit): number =>
  ownCarry(usual, measured, ownSd(usualSpread(club, usual, unit), measured))

function usualSpread(club: Club, usual: number, unit: LengthUnit): number {
  const lie = isForTheTeeAlone(club) ? 'tee' : 'fairway'
  const perUnit = yardsPerUnit(unit)
  const of = { skill: skillOf(usualIndex), clubClass: classOf(club), lie, scale: 1 } as const
  return spreadOf(of, usual * perUnit).lengthSdYd / perUnit
}

/** What the player measured with each club, in yards, as shots are judged by it. Only lengths are measured. */
export function ownShotsOf({ measured, unit }: Pick<Plan, 'measured' | 'unit'>): ReadonlyMap<Club, OwnShots> {
  const perUnit = yardsPerUnit(unit)
  return new Map(
    [...measured].map(([club, { shots, mean, squares }]) => [
      club,
      { carry: { shots, mean: mean * perUnit, squares: squares * perUnit ** 2 }, side: noShots, mishits: 0 },
    ]),
  )
}
