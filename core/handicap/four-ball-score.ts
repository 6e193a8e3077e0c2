import { err, ok, type Result } from '#core/values/result.ts'

/** A side's four-ball Stableford card from one partner's view. */
export interface FourBallCard {
  /** Off 85 percent. */
  readonly sidePoints: number
  /** The player's points on the holes where they counted for the side. */
  readonly ownPoints: readonly number[]
  /** The partner's points on the other holes. */
  readonly partnerPoints: readonly number[]
}

export interface FourBallScore {
  readonly ownHoles: number
  /** The player's points with the other holes filled in, in halves of a point. */
  readonly scaledHalfPoints: number
  readonly isAccepted: boolean
}

export const fourBallCardFaults = ['not-eighteen-holes', 'points-disagree'] as const
export type FourBallCardFault = (typeof fourBallCardFaults)[number]

const sidePointsNeeded = 42
const ownHolesNeeded = 9
const scaledHalfPointsNeeded = 72

/**
 * Whether a four-ball competition score goes into a partner's record, and with how many points: the side has 42 points or
 * more (six under par), the player counts on nine holes or more, and 36 points come together when the other holes are
 * filled with 0, 1 or 1.5 where the partner made 0, 1, or 2 and more.
 * Source: Rules of Handicapping, rule 2.1a as used in Great Britain and Ireland, 2024; club pages, second-hand.
 */
export function fourBallScore({
  sidePoints,
  ownPoints,
  partnerPoints,
}: FourBallCard): Result<FourBallScore, FourBallCardFault> {
  const [own, partner] = [sumOf(ownPoints), sumOf(partnerPoints)]
  if (ownPoints.length + partnerPoints.length !== 18) return err('not-eighteen-holes')
  if (own + partner !== sidePoints) return err('points-disagree')
  const scaledHalfPoints = 2 * own + sumOf(partnerPoints.map(filledHalfPoints))
  const isAccepted =
    sidePoints >= sidePointsNeeded && ownPoints.length >= ownHolesNeeded && scaledHalfPoints >= scaledHalfPointsNeeded
  return ok({ ownHoles: ownPoints.length, scaledHalfPoints, isAccepted })
}

const filledHalfPoints = (partnerPoints: number): number => (partnerPoints >= 2 ? 3 : 2 * partnerPoints)

const sumOf = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0)
