import { type BestAim, bestAim } from '#core/plan/aim/best-aim.ts'
import { penaltyShare } from '#core/plan/aim/judged.ts'
import { type HoleSketch, openHole, type PinSide, pinOn } from '#core/plan/aim/sketch.ts'
import type { Pin } from '#core/plan/approach.ts'
import { usualAssumptions, verdictBorders } from '#core/plan/assumptions.ts'
import { type Gap, type GapFigures, gapOrOut } from '#core/plan/choice/gap.ts'
import { type Situation, strokeWith } from '#core/plan/choice/situation.ts'
import { flightOf } from '#core/plan/day/ball-flight.ts'
import { playsOnDayYd } from '#core/plan/day/day-number.ts'
import { gripDown, inchesDown, riseYards } from '#core/plan/day/rise.ts'
import { clubForYd, type Golfer, type GolferClub } from '#core/plan/golfer.ts'
import { type TenStrokes, tenStrokes } from '#core/plan/picture/ten-strokes.ts'
import type { Lie } from '#core/plan/strokes/stroke-table.ts'
import { type NextAdvice, nextAdvice } from './hole-advice.ts'

/** A ball in hand, in a practice round. Not for play under the Rules (`day/allowed-in-play.ts`). */
export interface BallInHand {
  readonly golfer: Golfer
  readonly distanceYd: number
  readonly pinDepth: Pin
  readonly pinSide: PinSide
  readonly lie: Exclude<Lie, 'green'>
  /** Null where nothing of the hole is known. */
  readonly sketch: HoleSketch | null
  /** How much longer the day plays, in percent. */
  readonly dayPercent: number
  /** How much higher the green lies, in yards. */
  readonly riseYd: number
  /** The opening in front of a ball in the trees; null where there is none or nobody said. */
  readonly gap: Gap | null
  readonly favouriteYd: number | null
}

/** Why an aim is what it is. */
export const aimReasons = ['flag-costs-nothing', 'between', 'middle', 'away-from-trouble'] as const
export type AimReason = (typeof aimReasons)[number]

/** What a distance plays like: the day and the rise in one number, with what the rules for the rise say otherwise. */
export interface PlaysLike {
  readonly yd: number
  readonly leastYd: number
  readonly mostYd: number
}

export type ShotAdvice =
  | {
      readonly kind: 'green'
      readonly plays: PlaysLike
      /** What to hit it for, to the best aim. */
      readonly targetYd: number
      readonly club: GolferClub
      /** Inches down the grip; `isPartSwing` where that would be more than the grip has. */
      readonly gripDownInches: number
      readonly isPartSwing: boolean
      readonly aim: BestAim
      readonly reason: AimReason
      readonly picture: TenStrokes
    }
  /** Out of reach: a lay-up, or as far as it goes. */
  | { readonly kind: 'lay-up'; readonly plays: PlaysLike; readonly next: NextAdvice }
  /** From the trees: out first, unless the gap is cleared often enough for every assumption. Null figures: no gap, no reach. */
  | { readonly kind: 'recovery'; readonly plays: PlaysLike; readonly gap: GapFigures | null }

/** What the numbers say for the ball in hand; the habits' answer is `shotNote`. */
export function shotAdvice(ball: BallInHand): ShotAdvice {
  const { golfer, lie, distanceYd, favouriteYd } = ball
  const sketch = ball.sketch ?? openHole(distanceYd)
  const pin = pinOn(sketch.green, ball.pinDepth, ball.pinSide)
  const at: Situation = { golfer, sketch, pin, distanceYd, lie }
  const plays = playsLike(ball)
  if (lie === 'recovery') return { kind: 'recovery', plays, gap: ball.gap && gapOrOut(at, ball.gap) }
  const club = clubForYd(golfer, lie, plays.yd, 1)
  if (club === null) return { kind: 'lay-up', plays, next: outOfReach(at, plays, favouriteYd) }
  const stroke = strokeWith(at, club, distanceYd, usualAssumptions)
  const aim = bestAim(stroke, sketch, pin)
  const targetYd = plays.yd + (aim.best.aim.beyondYd - pin.beyondYd)
  const whole = clubForYd(golfer, lie, targetYd, 1) ?? club
  const inches = inchesDown(whole.carryYd, targetYd)
  return {
    kind: 'green',
    plays,
    targetYd: Math.min(targetYd, whole.carryYd),
    club: whole,
    gripDownInches: Math.min(inches, gripDown.mostInches),
    isPartSwing: inches > gripDown.mostInches,
    aim,
    reason: reasonOf(aim, pin.rightYd, sketch.green.rightYd),
    picture: tenStrokes(stroke, aim.best.aim),
  }
}

/** A green may lie within a club's carry and play beyond it: then it is a shot that comes up short. */
function outOfReach(at: Situation, { yd }: PlaysLike, favouriteYd: number | null): NextAdvice {
  const next = nextAdvice(at, favouriteYd)
  if (next.kind !== 'green') return next
  return { kind: 'far', leavesYd: at.distanceYd, club: next.club, thenYd: yd - next.club.carryYd }
}

function playsLike({ golfer, distanceYd, dayPercent, riseYd, lie }: BallInHand): PlaysLike {
  const club = clubForYd(golfer, lie, distanceYd, 1)
  const rise = riseYards(riseYd, flightOf(club?.club === 'driver' ? 'driver' : 'iron', distanceYd))
  const day = playsOnDayYd(distanceYd, dayPercent)
  const byFlightYd = Math.max(1, day + rise.byFlightYd)
  const byRuleYd = Math.max(1, day + rise.byRuleYd)
  return { yd: byFlightYd, leastYd: Math.min(byFlightYd, byRuleYd), mostYd: Math.max(byFlightYd, byRuleYd) }
}

/** Aims this near are the same. */
const sameAimYd = 2

function reasonOf({ best, flagCost, middleCost }: BestAim, pinRightYd: number, middleRightYd: number): AimReason {
  const aimYd = best.aim.rightYd
  if (flagCost < verdictBorders.slightly) return 'flag-costs-nothing'
  const isBeyondMiddle = (aimYd - middleRightYd) * (pinRightYd - middleRightYd) < 0
  const isFarFromMiddle = Math.abs(aimYd - middleRightYd) > sameAimYd
  if (isFarFromMiddle && (isBeyondMiddle || (pinRightYd === middleRightYd && penaltyShare(best.shares) > 0)))
    return 'away-from-trouble'
  return isFarFromMiddle && middleCost > 0 ? 'between' : 'middle'
}
