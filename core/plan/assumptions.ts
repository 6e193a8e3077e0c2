import type { Evidence } from './evidence.ts'

/** What an answer is worked out under. Each is varied to see whether the answer stands. */
export interface Assumptions {
  /** How much wider than the default every shot scatters. */
  readonly spreadScale: number
  /** How much farther than its number every club carries. */
  readonly carryScale: number
  /** Whether a miss on the pin's own side of the green costs more than the tables say. */
  readonly countsShortSide: boolean
  /** How many of the balls that clip a tree stay in the trees. */
  readonly stuckShare: number
}

export const usualAssumptions: Assumptions = {
  spreadScale: 1,
  carryScale: 1,
  countsShortSide: true,
  stuckShare: 0.6,
}

/** From which difference in strokes an answer says anything, and says it clearly. Source: our own. */
export const verdictBorders = {
  confidence: 'own',
  source: 'ours',
  slightly: 0.05,
  clearly: 0.1,
} as const satisfies Evidence & Record<string, unknown>

/** Beside the usual figures an answer must stand with every spread narrower and wider, and every carry shorter and longer. Our own. */
export const spreadScales = [0.8, 1.2] as const
export const carryScales = [0.95, 1.05] as const

export const verdicts = ['no-difference', 'slightly', 'clearly', 'too-close'] as const
/** `too-close`: the answer turns when the spread is taken narrower or wider. */
export type Verdict = (typeof verdicts)[number]

/** What one way costs more than another, in strokes a shot: as reckoned, and the least and most under what is varied. */
export interface Difference {
  readonly strokes: number
  readonly least: number
  readonly most: number
  readonly verdict: Verdict
}

/** From the usual figure and the varied ones. A difference that changes its sign is too close to call. */
export function differenceOf(usual: number, varied: readonly number[]): Difference {
  const [least, most] = [Math.min(usual, ...varied), Math.max(usual, ...varied)]
  return { strokes: usual, least, most, verdict: verdictOf(usual, least, most) }
}

function verdictOf(usual: number, least: number, most: number): Verdict {
  const size = Math.abs(usual)
  if (size < verdictBorders.slightly) return 'no-difference'
  if (least < 0 && most > 0) return 'too-close'
  const surely = Math.min(Math.abs(least), Math.abs(most))
  return size > verdictBorders.clearly && surely >= verdictBorders.slightly ? 'clearly' : 'slightly'
}
