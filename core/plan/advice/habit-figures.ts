import { expectedWith } from '#core/plan/aim/judged.ts'
import { middleOf, openHole, type Place, pinOn, usualGround } from '#core/plan/aim/sketch.ts'
import {
  type Assumptions,
  type Difference,
  differenceOf,
  spreadScales,
  usualAssumptions,
} from '#core/plan/assumptions.ts'
import { favouriteAgainst } from '#core/plan/choice/lay-up-sweep.ts'
import { type Situation, strokeWith } from '#core/plan/choice/situation.ts'
import { teeClubs } from '#core/plan/choice/tee-club.ts'
import { clubForYd, type Golfer, longestCarryYd } from '#core/plan/golfer.ts'

/** An assumption of our own that an answer turns with. */
export type RestsOn = 'short-side' | null

/** What the numbers say of a habit for one player, in strokes for every ten such shots; above 0 the habit saves. */
export interface HabitFigures {
  readonly perTenShots: number
  readonly least: number
  readonly most: number
  readonly verdict: Difference['verdict']
  /** True where the habit is the better way, false where the other is, by the usual figures. */
  readonly habitIsBetter: boolean
  readonly restsOn: RestsOn
}

const tenShots = 10

const figuresOf = ({ strokes, least, most, verdict }: Difference, restsOn: RestsOn): HabitFigures => ({
  perTenShots: tenShots * strokes,
  least: tenShots * least,
  most: tenShots * most,
  verdict,
  habitIsBetter: strokes > 0,
  restsOn,
})

/** What a way saves that costs so much more. */
const savedBy = ({ strokes, least, most, verdict }: Difference): Difference => ({
  strokes: -strokes,
  least: -most,
  most: -least,
  verdict,
})

/** What an aim costs more than another, with spread narrower and wider, and with the short side counted or not. */
function aimAgainst(at: Situation, other: Place, habit: Place): HabitFigures | null {
  const club = clubForYd(at.golfer, at.lie, at.distanceYd, 1)
  if (club === null) return null
  const saved = (change: Partial<Assumptions>): number => {
    const stroke = strokeWith(at, club, at.distanceYd, { ...usualAssumptions, ...change })
    return expectedWith(stroke, other) - expectedWith(stroke, habit)
  }
  const by = (countsShortSide: boolean): Difference =>
    differenceOf(
      saved({ countsShortSide }),
      spreadScales.map(spreadScale => saved({ countsShortSide, spreadScale })),
    )
  const [counted, free] = [by(true), by(false)]
  const turns = counted.verdict !== free.verdict || counted.strokes > 0 !== free.strokes > 0
  return figuresOf(counted, turns ? 'short-side' : null)
}

/** The middle of the green against the flag: a pin at the side, nothing but rough around. */
export function middleFigures(golfer: Golfer, distanceYd: number): HabitFigures | null {
  const sketch = { green: usualGround.green, shapes: [] }
  const pin = { rightYd: 9, beyondYd: 0 }
  return aimAgainst({ golfer, sketch, pin, distanceYd, lie: 'fairway' }, pin, middleOf(sketch.green))
}

/** A few yards past a front pin, or short of a back one, against the pin's own number. */
export function pinDepthFigures(
  golfer: Golfer,
  distanceYd: number,
  depth: 'front' | 'back',
  byYd: number,
): HabitFigures | null {
  const sketch = { green: usualGround.green, shapes: [] }
  const pin = pinOn(sketch.green, depth, 'middle')
  const habit = { ...pin, beyondYd: pin.beyondYd + (depth === 'front' ? byYd : -byYd) }
  return aimAgainst({ golfer, sketch, pin, distanceYd, lie: 'fairway' }, pin, habit)
}

/** The number is asked where the green is this far beyond the longest club. */
const beyondReachYd = 30

/** The favourite number against the best of the others, on clear ground; null where it is out of reach. */
export function favouriteFigures(golfer: Golfer, favouriteYd: number): HabitFigures | null {
  const distanceYd = Math.max(longestCarryYd(golfer, 'fairway'), favouriteYd) + beyondReachYd
  const sketch = openHole(distanceYd + 200)
  const found = favouriteAgainst(
    { golfer, sketch, pin: middleOf(sketch.green), distanceYd, lie: 'fairway' },
    favouriteYd,
  )
  return found && figuresOf(savedBy(found.cost), null)
}

/** The driver against the best of less, on the open hole; above 0 the driver saves. Null without one of them. */
export function driverFigures(golfer: Golfer, lengthYd: number): HabitFigures | null {
  const { driverAgainstLess } = teeClubs(golfer, openHole(lengthYd), lengthYd)
  return driverAgainstLess && figuresOf(savedBy(driverAgainstLess), null)
}
