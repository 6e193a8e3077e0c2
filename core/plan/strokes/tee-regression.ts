import type { Evidence } from '#core/plan/evidence.ts'

/** Strokes from the tee as a straight line in the hole's length in yards. */
export interface TeeRegression extends Evidence {
  readonly atNothing: number
  readonly perYd: number
}

/** Source: Broadie 2011, section 3.1, second-hand. */
export const teeRegressions = {
  tour: { confidence: 'second-hand', source: 'putting-model', atNothing: 2.38, perYd: 0.0041 },
  golfer90: { confidence: 'second-hand', source: 'putting-model', atNothing: 2.79, perYd: 0.0066 },
} as const satisfies Record<string, TeeRegression>

export const strokesFromTee = ({ atNothing, perYd }: TeeRegression, lengthYd: number): number =>
  atNothing + perYd * lengthYd
