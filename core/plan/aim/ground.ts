import type { Evidence } from '#core/plan/evidence.ts'
import { strokesAt, strokesFor } from '#core/plan/strokes/expected-strokes.ts'
import { skillOf } from '#core/plan/strokes/skill.ts'
import { entryInto, isInside, runToward } from './outline.ts'
import type { HoleSketch, Place, Shape } from './sketch.ts'

/** What a ball can come to rest in. */
export const outcomes = ['green', 'fairway', 'rough', 'sand', 'recovery', 'water', 'out-of-bounds'] as const
export type Outcome = (typeof outcomes)[number]

/** A hole for one golfer with the pin where it stands, asked where a ball lies and what it is worth there. */
export interface Ground {
  outcomeAt(rightYd: number, beyondYd: number): Outcome
  /** Strokes still to come, a penalty stroke among them; 0 out of bounds, where the stroke is played again. */
  valueAt(outcome: Outcome, rightYd: number, beyondYd: number): number
  readonly hasOutOfBounds: boolean
}

/**
 * A ball off the green with little green before the pin is harder to get close than the tables say, which know no sides.
 * Source: our own; no figure is published. Whoever uses it says what the answer is without it.
 */
export const shortSide = {
  confidence: 'own',
  source: 'ours',
  tourStrokes: 0.1,
  golfer90Strokes: 0.25,
  /** With this much green before the pin or less it counts in full, with twice as much not at all. */
  fullRunYd: 5,
  withinYd: 30,
} as const satisfies Evidence & Record<string, unknown>

/** Two club-lengths back from where a ball went in. Source: Rules of Golf 2023, rule 17.1d, the length from memory. */
const dropBackYd = 2

export interface GroundOf {
  readonly sketch: HoleSketch
  readonly pin: Place
  /** Where the ball is played from. */
  readonly ball: Place
  readonly handicapIndex: number
  readonly countsShortSide: boolean
}

/** A shape ready to be asked a hundred thousand times: what is drawn over what is the order of the list. */
interface Area {
  readonly form: Shape['form']
  readonly middleX: number
  readonly middleY: number
  readonly perX: number
  readonly perY: number
  readonly outcome: Outcome
}

const areaOf = (
  { form, rightYd, beyondYd, halfWidthYd, halfDepthYd }: Omit<Shape, 'kind'>,
  outcome: Outcome,
): Area => ({
  form,
  middleX: rightYd,
  middleY: beyondYd,
  perX: 1 / halfWidthYd,
  perY: 1 / halfDepthYd,
  outcome,
})

/** Out of bounds is so wherever it is drawn, and a green is a green. */
function areasOf({ shapes }: HoleSketch, green: Omit<Shape, 'kind'>): Area[] {
  const drawn = (kind: Shape['kind'], outcome: Outcome): Area[] =>
    shapes.flatMap(shape => (shape.kind === kind ? [areaOf(shape, outcome)] : []))
  return [
    ...drawn('out-of-bounds', 'out-of-bounds'),
    areaOf(green, 'green'),
    ...drawn('water', 'water'),
    ...drawn('bunker', 'sand'),
    ...drawn('trees', 'recovery'),
    ...drawn('fairway', 'fairway'),
  ]
}

export function groundOf({ sketch, pin, ball, handicapIndex, countsShortSide }: GroundOf): Ground {
  const strokes = strokesFor(handicapIndex)
  const { widthYd, depthYd, rightYd } = sketch.green
  const green: Omit<Shape, 'kind'> = {
    form: 'oval',
    rightYd,
    beyondYd: 0,
    halfWidthYd: widthYd / 2,
    halfDepthYd: depthYd / 2,
  }
  const waters = sketch.shapes.filter(({ kind }) => kind === 'water')
  const add = countsShortSide ? shortSideStrokes(handicapIndex) : 0

  const areas = areasOf(sketch, green)
  const outcomeAt = (x: number, y: number): Outcome => {
    for (const { form, middleX, middleY, perX, perY, outcome } of areas) {
      const across = Math.abs((x - middleX) * perX)
      const beyond = Math.abs((y - middleY) * perY)
      if (across > 1 || beyond > 1) continue
      if (form === 'box' || across * across + beyond * beyond <= 1) return outcome
    }
    return 'rough'
  }
  const valueAt = (outcome: Outcome, x: number, y: number): number => {
    if (outcome === 'out-of-bounds') return 0
    if (outcome === 'water') return 1 + strokesAt(strokes, 'rough', dropYd(waters, ball, pin, x, y))
    const leftYd = Math.hypot(x - pin.rightYd, y - pin.beyondYd)
    const usual = strokesAt(strokes, outcome, leftYd)
    if (add === 0 || outcome === 'green' || leftYd > shortSide.withinYd) return usual
    const runYd = runToward(green, x, y, pin)
    return usual + add * Math.min(1, Math.max(0, 2 - runYd / shortSide.fullRunYd))
  }
  return { outcomeAt, valueAt, hasOutOfBounds: areas[0]?.outcome === 'out-of-bounds' }
}

export const shortSideStrokes = (handicapIndex: number): number =>
  shortSide.tourStrokes + (shortSide.golfer90Strokes - shortSide.tourStrokes) * Math.min(1, skillOf(handicapIndex))

/** How far the pin is from where a ball on its way to (x, y) went into the water. Common practice for the point of entry. */
function dropYd(waters: readonly Shape[], ball: Place, pin: Place, x: number, y: number): number {
  const along = waters.find(shape => isInside(shape, x, y))
  const share = along === undefined ? 1 : entryInto(along, ball, x, y)
  const inX = ball.rightYd + share * (x - ball.rightYd)
  const inY = ball.beyondYd + share * (y - ball.beyondYd)
  return Math.hypot(inX - pin.rightYd, inY - pin.beyondYd) + dropBackYd
}
