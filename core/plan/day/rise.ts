import type { Evidence } from '#core/plan/evidence.ts'
import type { Flight } from './ball-flight.ts'

/** How much longer a shot plays that ends higher than it began. */
export interface RiseYards {
  /** By the angle in which the ball comes down. */
  readonly byFlightYd: number
  /** By the rule of one yard for three feet. Common practice. */
  readonly byRuleYd: number
}

/** In yards of rise; below 0 the target lies lower and the shot plays shorter. Source: geometry; the angle derived. */
export const riseYards = (riseYd: number, { descentDeg }: Flight): RiseYards => ({
  byFlightYd: riseYd / Math.tan((descentDeg * Math.PI) / 180),
  byRuleYd: riseYd,
})

/** Source: derived from the flight of a ball, 1.4 to 2.7 percent an inch; teachers say three to five yards. */
export const gripDown = {
  confidence: 'derived',
  source: 'ball-flight',
  percentPerInch: 2,
  leastPercent: 1.4,
  mostPercent: 2.7,
  mostInches: 2,
} as const satisfies Evidence & Record<string, unknown>

/** How many inches down the grip take a club from its carry to a shorter one; more than `mostInches` asks for less than a full swing. */
export const inchesDown = (carryYd: number, wantedYd: number): number =>
  Math.max(0, (100 * (1 - wantedYd / carryYd)) / gripDown.percentPerInch)

export const grippedDownYd = (carryYd: number, inches: number): number =>
  carryYd * (1 - (gripDown.percentPerInch * inches) / 100)
