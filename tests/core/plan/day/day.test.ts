import { describe, expect, it } from 'vitest'
import { flightOf, flights } from '#core/plan/day/ball-flight.ts'
import { dayNumber, heightRules, playsOnDayYd, warmthRules, windRules } from '#core/plan/day/day-number.ts'
import { gripDown, grippedDownYd, inchesDown, riseYards } from '#core/plan/day/rise.ts'
import { planFigures } from '../../../reference/plan/figures.ts'

const asEver = { headMph: 0, warmerC: 0, higherM: 0 }

/** Source of the figures: flights worked out with the drag and lift of Smits and Smith 1994 (derived). */
describe('the flight of a ball', () => {
  it('is what was worked out, within half a percent of the carry where the wind is 10 miles an hour', () => {
    for (const [at, row] of planFigures.tables.env.rows.entries()) {
      const flight = flights[at]
      if (flight === undefined) throw new Error('a row is missing')
      const change = (mph: number) =>
        100 * (flight.carryYd / windRules['ball-flight'].playsYd(flight.carryYd, mph, flight) - 1)
      // The worked carry changes by the share; to play a distance into the wind the shot must carry more by its inverse.
      expect(change(10)).toBeCloseTo(row.head10mph_pct ?? 0, 0)
      expect(Math.abs(change(-10) - (row.tail10mph_pct ?? 0))).toBeLessThan(0.3)
    }
  })

  it('lies between the two rows that a carry lies between, and is the last one beyond', () => {
    expect(flightOf('iron', 167).descentDeg).toBeCloseTo(42.5, 9)
    expect(flightOf('driver', 300)).toMatchObject({ carryYd: 221 })
    expect(flightOf('iron', 60)).toMatchObject({ carryYd: 113 })
  })
})

describe.each(flights)('a $kind of $carryYd yards', flight => {
  const day = (change: Partial<typeof asEver>) => dayNumber({ ...asEver, ...change }, flight.carryYd, flight)

  it('plays its own length on a day as ever (derived)', () => {
    expect(day({})).toEqual({ percent: 0, least: 0, most: 0, rule: 'ball-flight' })
    expect(playsOnDayYd(150, 0)).toBe(150)
  })

  it('plays shorter when it is warmer, higher or down the wind, and a headwind takes more than a tailwind gives (derived)', () => {
    expect(day({ warmerC: 10 }).percent).toBeLessThan(0)
    expect(day({ warmerC: -10 }).percent).toBeGreaterThan(0)
    expect(day({ higherM: 1000 }).percent).toBeLessThan(0)
    expect(day({ headMph: -10 }).percent).toBeLessThan(0)
    expect(day({ headMph: 10 }).percent).toBeGreaterThan(Math.abs(day({ headMph: -10 }).percent))
  })

  it('has a range of the rules about the number', () => {
    for (const change of [{ headMph: 12 }, { headMph: -12 }, { warmerC: -8 }, { higherM: 800 }]) {
      const { percent, least, most } = day(change)
      expect(least).toBeLessThanOrEqual(percent)
      expect(most).toBeGreaterThanOrEqual(percent)
    }
  })

  it('plays longer uphill and shorter downhill by as much (derived)', () => {
    expect(riseYards(5, flight).byFlightYd).toBeGreaterThan(0)
    expect(riseYards(-5, flight).byFlightYd).toBeCloseTo(-riseYards(5, flight).byFlightYd, 9)
    if (flight.descentDeg === 45) expect(Math.abs(riseYards(10, flight).byFlightYd - 10)).toBeLessThan(1)
  })

  it('loses 1.4 to 2.7 percent an inch down the grip (derived)', () => {
    expect(-flight.gripDownPerInch).toBeGreaterThanOrEqual(gripDown.leastPercent)
    expect(-flight.gripDownPerInch).toBeLessThanOrEqual(gripDown.mostPercent)
  })
})

describe('gripping down', () => {
  it('is counted in inches that give the shorter carry', () => {
    expect(grippedDownYd(150, inchesDown(150, 145))).toBeCloseTo(145, 9)
    expect(inchesDown(145, 150)).toBe(0)
  })
})

describe('rules of thumb', () => {
  it('say nothing where nothing is out of the ordinary', () => {
    const flight = flightOf('iron', 150)
    for (const rules of [windRules, warmthRules, heightRules]) {
      for (const rule of Object.values(rules)) expect(rule.playsYd(150, 0, flight)).toBe(150)
    }
  })
})
