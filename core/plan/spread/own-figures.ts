import type { Evidence } from '#core/plan/evidence.ts'
import { mishits } from './spread-model.ts'

/** How strongly the defaults hold against a golfer's own shots, each as the shots that they are worth. */
export const priors = {
  confidence: 'own',
  source: 'ours',
  /** Of the default carry. */
  carrySdShare: 0.06,
  spreadShots: 10,
  /** Of the sideways spread. */
  sideBiasSdShare: 0.35,
  mishitShots: 20,
  penaltyDrives: 28,
  puttsInBand: 30,
  skillSd: 0.25,
} as const satisfies Evidence & Record<string, unknown>

/** What was measured of a number of shots: their mean, and the sum of squares about it. */
export interface Measured {
  readonly shots: number
  readonly mean: number
  readonly squares: number
}

/** The measures of single values; of none they are all 0. */
export function measuredOf(values: readonly number[]): Measured {
  const mean = values.reduce((sum, each) => sum + each, 0) / Math.max(1, values.length)
  return { shots: values.length, mean, squares: values.reduce((sum, each) => sum + (each - mean) ** 2, 0) }
}

/** A default and an own mean, each weighed by how sure it is: normal and normal. Source: our own, a standard rule of Bayes. */
export function ownMean(usual: number, usualSd: number, { shots, mean }: Measured, shotSd: number): number {
  if (shots === 0) return usual
  const [ofUsual, ofOwn] = [1 / usualSd ** 2, shots / shotSd ** 2]
  return (usual * ofUsual + mean * ofOwn) / (ofUsual + ofOwn)
}

/** A carry from its default and what was measured, all in one unit; `lengthSd` of a shot. */
export const ownCarry = (usual: number, measured: Measured, lengthSd: number): number =>
  ownMean(usual, priors.carrySdShare * usual, measured, lengthSd)

/** A spread: the variance of a scaled inverse chi squared. Its mean is measured too, which takes one shot. */
export function ownSd(usualSd: number, { shots, squares }: Measured): number {
  if (shots < 2) return usualSd
  return Math.sqrt((priors.spreadShots * usualSd ** 2 + squares) / (priors.spreadShots + shots - 1))
}

/** How far right of the aim good shots finish on average; none by default. */
export const ownSideBiasYd = (measured: Measured, sideSdYd: number): number =>
  ownMean(0, priors.sideBiasSdShare * sideSdYd, measured, sideSdYd)

/** How good somebody is in one part of the game, on the scale of `skillOf`, from rounds measured on it. */
export const ownSkill = (usual: number, measured: Measured, roundSd: number): number =>
  ownMean(usual, priors.skillSd, measured, roundSd)

/** A share counted in tries, held against the usual share as if that had been counted in `strength` tries. */
export const ownShare = (usual: number, strength: number, counted: number, tries: number): number =>
  (strength * usual + counted) / (strength + tries)

export const ownMishitShare = (usual: number, mishit: number, shots: number): number =>
  ownShare(usual, priors.mishitShots, mishit, shots)

export const ownPenaltyShare = (usual: number, penalties: number, drives: number): number =>
  ownShare(usual, priors.penaltyDrives, penalties, drives)

/** Of putts from about one length. */
export const ownHoledShare = (usual: number, holed: number, putts: number): number =>
  ownShare(usual, priors.puttsInBand, holed, putts)

/** The carry of good strikes behind an average that has the mishits in it. */
export const goodStrikeYd = (averageYd: number, mishitShare: number): number =>
  averageYd / (1 - mishitShare * (1 - mishits.lengthMeanShare))
