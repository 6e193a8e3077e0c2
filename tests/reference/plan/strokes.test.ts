import { describe, expect, it } from 'vitest'
import { planSources } from '#core/plan/evidence.ts'
import { expectedStrokes } from '#core/plan/strokes/expected-strokes.ts'
import { golfer90Putts, golfer90Strokes } from '#core/plan/strokes/golfer-90-strokes.ts'
import { holedShare, puttingModels, puttsFrom } from '#core/plan/strokes/putting.ts'
import { skillOf } from '#core/plan/strokes/skill.ts'
import { lies } from '#core/plan/strokes/stroke-table.ts'
import { strokesFromTee, teeRegressions } from '#core/plan/strokes/tee-regression.ts'
import { tourPutts, tourStrokes } from '#core/plan/strokes/tour-strokes.ts'
import { confidenceOf, planFigures } from './figures.ts'

const { tables } = planFigures
const tour = -5
const indexes = [-5, 0, 5, 10, 16, 20, 28, 33]
const yards = (from: number, to: number, step = 5) =>
  Array.from({ length: (to - from) / step + 1 }, (_, at) => from + at * step)

function neverFalls(values: readonly number[]): void {
  for (const [at, value] of values.slice(1).entries()) expect(value).toBeGreaterThanOrEqual((values[at] ?? 0) - 1e-9)
}

describe('the tables', () => {
  it('are the printed ones, row by row, with their confidence', () => {
    expect(tourStrokes.rows).toEqual(tables.tour_strokes_to_hole_out.rows)
    expect(golfer90Strokes.rows).toEqual(tables.golfer90_strokes_to_hole_out.rows)
    const inThousandths = (putts: readonly number[]) => putts.map(each => Math.round(each * 1000))
    expect(tourPutts.thousandthsByFoot).toEqual(inThousandths(tables.tour_putts.avg_putts))
    expect(golfer90Putts.thousandthsByFoot).toEqual(inThousandths(tables.golfer90_putts.avg_putts))
    expect(tourStrokes.confidence).toBe(confidenceOf(tables.tour_strokes_to_hole_out.confidence))
    expect(golfer90Strokes.confidence).toBe(confidenceOf(tables.golfer90_strokes_to_hole_out.confidence))
    for (const { source } of [tourStrokes, golfer90Strokes, tourPutts, golfer90Putts]) {
      expect(planSources[source]).not.toBe('')
    }
  })

  it('mix to the worked examples within a hundredth (derived)', () => {
    for (const row of tables.E_examples.rows) {
      const [index = 0, fw30, fw60, fw100, fw150, fw200, ro30, ro100, ro150, sa10, sa20] = row
      const got = [
        ...[30, 60, 100, 150, 200].map(yd => expectedStrokes(index, 'fairway', yd)),
        ...[30, 100, 150].map(yd => expectedStrokes(index, 'rough', yd)),
        ...[10, 20].map(yd => expectedStrokes(index, 'sand', yd)),
      ]
      const wanted = [fw30, fw60, fw100, fw150, fw200, ro30, ro100, ro150, sa10, sa20]
      for (const [at, value] of got.entries()) expect(Math.abs(value - (wanted[at] ?? 0))).toBeLessThan(0.0101)
    }
  })
})

describe('strokes to hole out', () => {
  it('1 tour from 150 yards of fairway: 2.945 (Broadie 2012, second-hand)', () => {
    expect(expectedStrokes(tour, 'fairway', 150)).toBeCloseTo(2.945, 2)
  })

  it('2 tour: fairway 30 2.52, rough 30 2.70, fairway 100 2.80 (Broadie 2012, second-hand)', () => {
    expect(expectedStrokes(tour, 'fairway', 30)).toBeCloseTo(2.52, 9)
    expect(expectedStrokes(tour, 'rough', 30)).toBeCloseTo(2.7, 9)
    expect(expectedStrokes(tour, 'fairway', 100)).toBeCloseTo(2.8, 9)
  })

  it('3 the 90-golfer from the tee: 3.45, 5.43, 6.09 (Broadie 2011, second-hand)', () => {
    const at = (yd: number) => strokesFromTee(teeRegressions.golfer90, yd)
    expect([at(100), at(400), at(500)].map(each => each.toFixed(2))).toEqual(['3.45', '5.43', '6.09'])
  })

  it('4 an Index of 16 from a tee at 400: 5.43 (Broadie 2011, second-hand)', () => {
    expect(Math.abs(expectedStrokes(16, 'tee', 400) - 5.43)).toBeLessThan(0.01)
  })

  it('5 an Index of +5 is the tour (derived)', () => {
    expect(skillOf(-5)).toBe(0)
    for (const [yd, , fairway, rough, sand, recovery] of tourStrokes.rows) {
      const got = (['fairway', 'rough', 'sand', 'recovery'] as const).map(lie => expectedStrokes(tour, lie, yd))
      expect(got).toEqual([fairway, rough, sand, recovery])
    }
  })

  it.each(indexes)('6 fairway and rough never fall with distance, 10 to 600 yards: Index %s (derived)', index => {
    for (const lie of ['fairway', 'rough'] as const) {
      neverFalls(yards(10, 600).map(yd => expectedStrokes(index, lie, yd)))
    }
  })

  it('7 no lie is easier for a higher Index (derived)', () => {
    for (const lie of lies) {
      for (const yd of lie === 'green' ? yards(1, 20, 1) : yards(10, 600)) {
        neverFalls(indexes.map(index => expectedStrokes(index, lie, yd)))
      }
    }
  })

  it.each(indexes)('8 fairway, rough, recovery in that order: Index %s (derived)', index => {
    for (const yd of yards(10, 600)) {
      neverFalls((['fairway', 'rough', 'recovery'] as const).map(lie => expectedStrokes(index, lie, yd)))
    }
  })

  it.each(indexes)('9 a putt is worth less than the rough at 2 to 20 yards: Index %s (derived)', index => {
    for (const yd of yards(2, 20, 1)) {
      expect(expectedStrokes(index, 'green', yd)).toBeLessThan(expectedStrokes(index, 'rough', yd))
    }
  })

  it('10 the table keeps where it falls: tee at 140, sand and recovery (Broadie 2012, second-hand)', () => {
    expect(expectedStrokes(tour, 'tee', 140)).toBeLessThan(expectedStrokes(tour, 'tee', 120))
    expect(expectedStrokes(tour, 'sand', 120)).toBeLessThan(expectedStrokes(tour, 'sand', 90))
    expect(expectedStrokes(tour, 'recovery', 120)).toBeLessThan(expectedStrokes(tour, 'recovery', 80))
  })

  it('stop where the evidence does: an Index of 54 is one of 33.85 (derived)', () => {
    expect(expectedStrokes(54, 'fairway', 150)).toBe(expectedStrokes(33.85, 'fairway', 150))
  })
})

describe('putts', () => {
  it('11 the tour holes half from 8 feet: 0.504 (Broadie 2011, second-hand)', () => {
    expect(Math.abs(holedShare(puttingModels.tour, 8) - 0.504)).toBeLessThan(0.005)
  })

  it('12 agrees with 31 counted distances where the check values name them (Berry, Broadie, Gelman; published)', () => {
    for (const feet of [2.92, 4.94, 9.95, 20.44, 40.37]) {
      const [, tries = 1, made = 0] = tables.tour_make_prob.rows_ft_tries_made.find(([ft]) => ft === feet) ?? []
      expect(Math.abs(holedShare(puttingModels.tour, feet) - made / tries)).toBeLessThan(0.015)
    }
  })

  it('13 fewer drop from farther, and more putts are taken (derived)', () => {
    for (const model of Object.values(puttingModels)) {
      const feet = yards(1, 60, 1)
      neverFalls(feet.map(each => -holedShare(model, each)))
      neverFalls(feet.map(each => puttsFrom(model, each)))
    }
  })

  it('14 the tour takes two from 33 feet (Broadie 2011, second-hand)', () => {
    expect(Math.abs(puttsFrom(puttingModels.tour, 33) - 2)).toBeLessThan(0.03)
  })

  it('15 the 90-golfer holes half from 5 feet and takes two from 19 (Broadie 2011, second-hand)', () => {
    expect(Math.abs(holedShare(puttingModels.golfer90, 5) - 0.5)).toBeLessThan(0.03)
    expect(Math.abs(puttsFrom(puttingModels.golfer90, 19) - 2)).toBeLessThan(0.05)
  })

  it('agrees with the derived table of the 90-golfer (derived)', () => {
    for (const [at, share] of tables.golfer90_putts.make_prob.entries()) {
      expect(Math.abs(holedShare(puttingModels.golfer90, at + 1) - share)).toBeLessThan(0.002)
    }
  })
})
