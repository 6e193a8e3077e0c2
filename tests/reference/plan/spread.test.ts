import { describe, expect, it } from 'vitest'
import { ratedGenders } from '#core/handicap/slope.ts'
import { usualDriveYd } from '#core/plan/spread/driver-distance.ts'
import { mishits, spreadOf, usualShortYd } from '#core/plan/spread/spread-model.ts'
import { skillOf } from '#core/plan/strokes/skill.ts'
import { makeDice } from '../../kit/normal-dice.ts'
import { planFigures } from './figures.ts'

const iron = (index: number, lengthYd: number, lie: 'fairway' | 'rough' | 'tee' = 'fairway') =>
  spreadOf({ skill: skillOf(index), clubClass: 'iron', lie, scale: 1 }, lengthYd)

/** Where 60,000 shots at 150 yards finish who mean the full number, mishits and the usual shortness with them. */
function patternAt150(index: number) {
  const dice = makeDice(90)
  const spread = iron(index, 150)
  const missesYd: number[] = []
  let [sum, onGreen] = [0, 0]
  for (let shot = 0; shot < 60_000; shot++) {
    const isMishit = dice.share() < spread.mishitShare
    const x = dice.normal() * spread.sideSdYd * (isMishit ? mishits.sideFactor : 1)
    const y = isMishit
      ? 150 * (mishits.lengthMeanShare - 1 + dice.normal() * mishits.lengthSdShare)
      : dice.normal() * spread.lengthSdYd - usualShortYd(skillOf(index), 150)
    missesYd.push(Math.hypot(x, y))
    sum += y
    if ((x / 13) ** 2 + (y / 14) ** 2 < 1) onGreen++
  }
  missesYd.sort((a, b) => a - b)
  return { medianYd: missesYd[30_000] ?? 0, meanYd: sum / 60_000, greenShare: onGreen / 60_000 }
}

/** A Handicap Index that stands for each band; of the open ones our own. */
const middleOfBand: Readonly<Record<string, number>> = {
  '<=5': 3,
  '6-12': 9,
  '13-20': 16.5,
  '21+': 26,
  '21-28': 24.5,
  '29+': 33,
}

describe('where shots finish', () => {
  it('16 the tour’s median miss at 150 yards is 5.2 percent, within 0.4 (James and Rees 2008, published)', () => {
    expect(Math.abs(patternAt150(-5).medianYd / 1.5 - 5.2)).toBeLessThan(0.4)
  })

  it('17 the 90-golfer at 150: median 59 feet within 6, green 35 percent within 5, 13 yards short within 1.5 (Broadie’s column, published)', () => {
    const { medianYd, meanYd, greenShare } = patternAt150(16)
    expect(Math.abs(medianYd * 3 - 59)).toBeLessThan(6)
    expect(Math.abs(greenShare - 0.35)).toBeLessThan(0.05)
    expect(Math.abs(meanYd + 13)).toBeLessThan(1.5)
  })

  it('18 wider for a higher Index and from farther (derived)', () => {
    for (const name of ['sideSdYd', 'lengthSdYd'] as const) {
      for (const [more, less] of [
        [iron(18, 150), iron(10, 150)],
        [iron(28, 150), iron(18, 150)],
        [iron(18, 160), iron(18, 150)],
      ]) {
        expect(more?.[name]).toBeGreaterThan(less?.[name] ?? 0)
      }
    }
  })

  it('19 wider from the rough, tighter from a tee (derived)', () => {
    for (const index of [-5, 0, 10, 18, 28, 36]) {
      expect(iron(index, 150, 'rough').sideSdYd).toBeGreaterThan(iron(index, 150).sideSdYd)
      expect(iron(index, 150, 'tee').lengthSdYd).toBeLessThan(iron(index, 150).lengthSdYd)
    }
  })

  it.each(ratedGenders)(
    'a drive of %s is within 8 yards of the mean of every band (R&A and USGA 2018, second-hand)',
    gender => {
      const { all: _, ...bands } = planFigures.tables.driver_distance_total[gender]
      for (const [band, yd] of Object.entries(bands)) {
        expect(Math.abs(usualDriveYd(middleOfBand[band] ?? Number.NaN, gender) - yd)).toBeLessThan(8)
      }
    },
  )

  it('is what the worked examples say at 150 yards (derived)', () => {
    for (const [index, { lat, long, q }] of Object.entries(planFigures.tables.dispersion_default.examples_150yd_SD)) {
      const { sideSdYd, lengthSdYd, mishitShare } = iron(Number(index), 150)
      expect([Math.abs(sideSdYd - lat), Math.abs(lengthSdYd - long)].every(gap => gap < 0.06)).toBe(true)
      expect(Math.abs(mishitShare - q)).toBeLessThan(0.001)
    }
  })
})
