import { describe, expect, it } from 'vitest'
import { shapeKinds } from '#core/outing/sketch.ts'
import { bestAim } from '#core/plan/aim/best-aim.ts'
import type { Ground } from '#core/plan/aim/ground.ts'
import { expectedWith } from '#core/plan/aim/judged.ts'
import type { Place, Shape } from '#core/plan/aim/sketch.ts'
import type { Stroke } from '#core/plan/aim/surface.ts'
import { mishits } from '#core/plan/spread/spread-model.ts'
import { type AimCase, strokeOf } from '../../../kit/aim-case.ts'
import { type Dice, makeDice } from '../../../kit/normal-dice.ts'
import { holeWith } from '../../../kit/plan-holes.ts'
import { seed } from '../../../kit/property.ts'

const situations = 40
const samples = 200_000
/** Played again and again, out of bounds ends here. */
const mostTries = 50

/** A hole, a shot and an aim by dice. */
function randomSituation(dice: Dice): { readonly of: AimCase; readonly aim: Place } {
  const between = (least: number, most: number): number => Math.floor(least + dice.share() * (most - least + 1))
  const shapes = Array.from({ length: between(0, 6) }, (): Shape => {
    const kind = shapeKinds[between(0, shapeKinds.length - 1)] ?? 'water'
    const halfWidthYd = between(3, 18)
    // No green is out of bounds: whoever loses four balls in five multiplies every error by 25.
    const rightYd =
      kind === 'out-of-bounds' ? (dice.share() < 0.5 ? -1 : 1) * (halfWidthYd + between(15, 30)) : between(-40, 40)
    return {
      kind,
      form: dice.share() < 0.5 ? 'oval' : 'box',
      rightYd,
      beyondYd: between(-45, 40),
      halfWidthYd,
      halfDepthYd: between(3, 18),
    }
  })
  const of: AimCase = {
    handicapIndex: between(-4, 36),
    distanceYd: between(50, 200),
    sketch: holeWith(...shapes),
    pin: { rightYd: between(-8, 8), beyondYd: between(-7, 7) },
    scale: 0.8 + 0.4 * dice.share(),
    countsShortSide: dice.share() < 0.5,
    mishitShare: null,
  }
  return { of, aim: { rightYd: between(-12, 12), beyondYd: between(-8, 8) } }
}

/** One shot thrown: where it ends, in `place`. */
function throwShot({ ball, spread }: Stroke, aim: Place, dice: Dice, place: Float64Array): void {
  const isMishit = dice.share() < spread.mishitShare
  const lengthYd = aim.beyondYd - ball.beyondYd
  const sideSdYd = spread.sideSdYd * (isMishit ? mishits.sideFactor : 1)
  place[0] = aim.rightYd + spread.sideBiasYd + dice.normal() * sideSdYd
  place[1] = isMishit
    ? ball.beyondYd + lengthYd * (mishits.lengthMeanShare + dice.normal() * mishits.lengthSdShare)
    : aim.beyondYd + dice.normal() * spread.lengthSdYd
}

/** Strokes of one playing of the situation: as often as the ball is out of bounds, again from the same place. */
function strokesOf(stroke: Stroke, ground: Ground, aim: Place, dice: Dice, place: Float64Array): number {
  let strokes = 0
  for (let tries = 0; tries < mostTries; tries++) {
    throwShot(stroke, aim, dice, place)
    const [x = 0, y = 0] = place
    const outcome = ground.outcomeAt(x, y)
    strokes++
    if (outcome !== 'out-of-bounds') return strokes + ground.valueAt(outcome, x, y)
    strokes++
  }
  return strokes
}

describe('the cost of an aim', () => {
  it(`is that of ${samples} shots thrown, within 0.02 and three standard errors, on ${situations} random situations`, () => {
    process.stdout.write(`seed ${seed}: shots thrown\n`)
    const dice = makeDice(seed)
    const place = new Float64Array(2)
    for (let at = 0; at < situations; at++) {
      const { of, aim } = randomSituation(dice)
      const stroke = strokeOf(of)
      let [sum, squares] = [0, 0]
      for (let shot = 0; shot < samples; shot++) {
        const strokes = strokesOf(stroke, stroke.ground, aim, dice, place)
        sum += strokes
        squares += strokes * strokes
      }
      const mean = sum / samples
      const error = Math.sqrt(Math.max(0, squares / samples - mean * mean) / samples)
      const gap = Math.abs(expectedWith(stroke, aim) - mean)
      expect(gap, `seed ${seed}, situation ${at}: ${JSON.stringify({ of, aim, mean })}`).toBeLessThan(0.02 + 3 * error)
    }
  })

  it('is the same whether one aim is laid out or the whole surface', () => {
    const dice = makeDice(seed)
    for (let at = 0; at < 10; at++) {
      const { of } = randomSituation(dice)
      const stroke = strokeOf(of)
      const { best } = bestAim(stroke, of.sketch, of.pin)
      expect(Math.abs(expectedWith(stroke, best.aim) - best.expected)).toBeLessThan(0.02)
    }
  })
})
