import { bestAim } from '#core/plan/aim/best-aim.ts'
import { type Assumptions, usualAssumptions } from '#core/plan/assumptions.ts'
import type { Evidence } from '#core/plan/evidence.ts'
import { clubForYd } from '#core/plan/golfer.ts'
import { normalShare } from '#core/plan/normal.ts'
import { expectedStrokes } from '#core/plan/strokes/expected-strokes.ts'
import { type Situation, strokeWith } from './situation.ts'

/** An opening between trees, in degrees left and right of the line that is played. */
export interface Gap {
  readonly leftDeg: number
  readonly rightDeg: number
}

/** What becomes of a shot out of trees. Source: our own; nobody publishes it, and the answer hangs on it. */
export const outOfTrees = {
  confidence: 'own',
  source: 'ours',
  /** A clipped ball that does not stay in the trees: in the rough, or one stroke worse. */
  clipped: { rough: 0.3, worse: 0.1 },
  /** How much nearer a clipped ball and one played out lie. */
  clippedYd: 25,
  playedOutYd: 20,
  playedOutOnFairway: 0.75,
  /** The range of what stays in the trees that the range of the answer comes from. */
  stuckFrom: 0.4,
  stuckTo: 0.8,
  /** A player is told to ask for this much: the figures are kind to the brave. */
  leastShare: 0.5,
} as const satisfies Evidence & Record<string, unknown>

/** How often a ball goes through: a normal error of the direction, in degrees. */
export const clearShare = ({ leftDeg, rightDeg }: Gap, errorDeg: number): number =>
  leftDeg + rightDeg <= 0 ? 0 : normalShare(rightDeg / errorDeg) - normalShare(-leftDeg / errorDeg)

/** The gap against playing out. */
export interface GapFigures {
  readonly clearShare: number
  /** How often it must go through to be worth it, and the range of that. */
  readonly breakEven: number
  readonly breakEvenLeast: number
  readonly breakEvenMost: number
  readonly throughGap: number
  readonly playedOut: number
  /** `gap` only where it goes through often enough for every assumption, and half the time at least. */
  readonly advice: 'gap' | 'out'
}

/** Null where no club of the bag reaches the green from there: out first, then as far down as is safe. */
export function gapOrOut(at: Situation, gap: Gap): GapFigures | null {
  const from: Situation = { ...at, lie: 'recovery' }
  const club = clubForYd(at.golfer, from.lie, at.distanceYd, 1)
  if (club === null) return null
  const stroke = strokeWith(from, club, at.distanceYd, usualAssumptions)
  const clear = bestAim(stroke, at.sketch, at.pin).best.expected
  const errorDeg = (Math.atan(stroke.spread.sideSdYd / at.distanceYd) * 180) / Math.PI
  const share = clearShare(gap, errorDeg)
  const playedOut = strokesPlayedOut(at)
  const breakEvenAt = (stuckShare: number): number => {
    const clipped = 1 + strokesClipped(at, { ...usualAssumptions, stuckShare })
    return Math.min(1, Math.max(0, (clipped - playedOut) / (clipped - clear)))
  }
  const [least, most] = [breakEvenAt(outOfTrees.stuckFrom), breakEvenAt(outOfTrees.stuckTo)]
  const clipped = 1 + strokesClipped(at, usualAssumptions)
  return {
    clearShare: share,
    breakEven: breakEvenAt(usualAssumptions.stuckShare),
    breakEvenLeast: least,
    breakEvenMost: most,
    throughGap: share * clear + (1 - share) * clipped,
    playedOut,
    advice: share >= Math.max(most, outOfTrees.leastShare) ? 'gap' : 'out',
  }
}

/** Out first: a stroke back to short grass, a little farther down. */
function strokesPlayedOut({ golfer, distanceYd }: Situation): number {
  const leftYd = Math.max(10, distanceYd - outOfTrees.playedOutYd)
  const { playedOutOnFairway } = outOfTrees
  const lyingIn = (lie: 'fairway' | 'rough'): number => expectedStrokes(golfer.handicapIndex, lie, leftYd)
  return 1 + playedOutOnFairway * lyingIn('fairway') + (1 - playedOutOnFairway) * lyingIn('rough')
}

/** What a ball that clipped a tree still needs. */
function strokesClipped({ golfer, distanceYd }: Situation, { stuckShare }: Assumptions): number {
  const leftYd = Math.max(10, distanceYd - outOfTrees.clippedYd)
  const { rough, worse } = outOfTrees.clipped
  const free = (1 - stuckShare) / (rough + worse)
  const inTrees = expectedStrokes(golfer.handicapIndex, 'recovery', leftYd)
  const inRough = expectedStrokes(golfer.handicapIndex, 'rough', leftYd)
  return stuckShare * inTrees + free * (rough * inRough + worse * (1 + inTrees))
}
