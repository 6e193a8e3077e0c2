import { describe, expect, test } from 'vitest'
import { pinOrMiddle, pinWithinYd, type UsualScore } from '#core/plan/choice/usual-score-rule.ts'
import { isAllowedInPlay, type PlayAid } from '#core/plan/day/allowed-in-play.ts'
import { flightOf } from '#core/plan/day/ball-flight.ts'
import { heightRules, warmthRules, windRules } from '#core/plan/day/day-number.ts'
import { caseOf, casesIn } from './worked-cases.ts'

/** Worked cases of a player's own plan; their pages are in the file. */
const cases = casesIn('plan-cases.json')

const flight = flightOf('iron', 150)
const drive = flightOf('driver', 250)

/** How far a shot of a carry goes by a rule that says what a distance plays like. */
const carries = (
  carryYd: number,
  rule: { playsYd(yd: number, input: number, of: typeof drive): number | null },
  by: number,
) => (carryYd * carryYd) / (rule.playsYd(carryYd, by, drive) ?? Number.NaN)

describe('a player’s own plan', () => {
  test('PL-01 three rules for the wind and one shot: 165, 170 or 160 into it, 142.5 or 145.5 down it (common practice)', () => {
    interface Setup {
      readonly distance: number
      readonly wind_mph: number
    }
    interface Both {
      readonly into: number
      readonly down: number
    }
    interface Expected {
      readonly percent_rule: Both
      readonly percent_plus_five: Both
      readonly one_yard_per_mph_slower_swings: { readonly into: number }
    }
    const { setup, expected } = caseOf<Setup, Expected>(cases, 'PL-01')
    const plays = (rule: keyof typeof windRules, mph: number) => windRules[rule].playsYd(setup.distance, mph, flight)
    const both = (rule: keyof typeof windRules) => ({
      into: plays(rule, setup.wind_mph),
      down: plays(rule, -setup.wind_mph),
    })
    expect(both('percent')).toEqual(expected.percent_rule)
    expect(both('percent-and-five')).toEqual(expected.percent_plus_five)
    expect(plays('yard-a-mile', setup.wind_mph)).toBe(expected.one_yard_per_mph_slower_swings.into)
    expect(plays('yard-a-mile', -setup.wind_mph)).toBeNull()
  })

  test('PL-02 a drive in the cold, in the heat and in the mountains: 246, 254, about 270 (common practice)', () => {
    interface Setup {
      readonly carry_70F: number
    }
    const { setup, expected } = caseOf<Setup, Readonly<Record<string, number>>>(cases, 'PL-02')
    const celsius = (fahrenheit: number): number => fahrenheit / 1.8
    const rule = warmthRules['yards-of-a-drive']
    expect(carries(setup.carry_70F, rule, celsius(-20))).toBeCloseTo(expected['50F'] ?? 0, 6)
    const hot = carries(setup.carry_70F, rule, celsius(20))
    expect(hot).toBeCloseTo(expected['90F'] ?? 0, 6)
    const high = carries(hot, heightRules['yards-of-a-drive'], 7000 * 0.3048)
    // The case adds yards to yards, the rule takes a share of the longer drive.
    expect(Math.abs(high - (expected['90F_7000ft'] ?? 0))).toBeLessThan(0.5)
  })

  test('PL-03 what a phone may show in a competition (Rules of Golf 4.3a)', () => {
    interface Setup {
      readonly features: readonly string[]
    }
    const { setup, expected } = caseOf<Setup, Readonly<Record<string, boolean>>>(cases, 'PL-03')
    expect(setup.features.map(feature => aidNamed[feature])).not.toContain(undefined)
    const shown = setup.features.map(feature => [feature, isAllowedInPlay(aidNamed[feature] ?? 'match-score', false)])
    expect(Object.fromEntries(shown)).toEqual(expected)
    expect(isAllowedInPlay('straight-distance', true)).toBe(false)
    expect(isAllowedInPlay('match-score', true)).toBe(true)
  })

  test('PL-04 pin or middle by what somebody usually scores (common practice)', () => {
    interface Setup {
      readonly thresholds_yards: Readonly<Record<UsualScore, number>>
      readonly shots: readonly (readonly [UsualScore, number])[]
    }
    const { setup, expected } = caseOf<Setup, { readonly aim: readonly string[] }>(cases, 'PL-04')
    expect(pinWithinYd).toEqual(setup.thresholds_yards)
    expect(setup.shots.map(([score, yd]) => pinOrMiddle(score, yd))).toEqual(expected.aim)
  })

  test('every case of the file is shown here', () => {
    expect(cases.map(({ id }) => id)).toEqual(['PL-01', 'PL-02', 'PL-03', 'PL-04'])
  })
})

const aidNamed: Readonly<Record<string, PlayAid>> = {
  'straight distance': 'straight-distance',
  'elevation-adjusted distance': 'distance-adjusted-for-height',
  'club suggestion from ball position': 'club-from-ball-position',
  'club chart prepared before the round': 'club-chart-made-before',
  'forecast wind': 'forecast-wind',
  'wind measured on the course': 'wind-measured-on-course',
  'temperature measured on the course': 'temperature-measured-on-course',
  'recording putts for later': 'putts-recorded-for-later',
  "club suggestion from today's distances": 'club-from-todays-distances',
  'match score': 'match-score',
  'hole note written last week': 'note-made-before',
}
