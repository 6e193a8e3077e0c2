import type { Evidence } from '#core/plan/evidence.ts'
import { type Flight, flightEvidence } from './ball-flight.ts'

/** What the day is like, against the days on which the carries in the bag were measured. All 0: as ever. */
export interface Day {
  /** Headwind in miles an hour; below 0 a tailwind. From a forecast: none may be measured on the course. */
  readonly headMph: number
  readonly warmerC: number
  readonly higherM: number
}

/** What a distance plays like by one rule, in yards; null where the rule says nothing of it. */
interface Rule<Input> extends Evidence {
  playsYd(distanceYd: number, input: Input, flight: Flight): number | null
}

/** A shot must carry farther by as much as the air takes from it. */
const against = (distanceYd: number, change: number): number => distanceYd / (1 + change)

const memorable: Evidence = { confidence: 'published', source: 'wind-percent' }

/**
 * Rules for the wind. Source: Golf Monthly; A. Rice; Golf Digest, each its own rule of thumb; the first is derived from the
 * flight of a ball. They disagree by ten yards at 150.
 */
export const windRules = {
  'ball-flight': {
    ...flightEvidence,
    playsYd: (yd, mph, { headPerMph, windPerMphSquared }) =>
      against(yd, -headPerMph * mph - windPerMphSquared * mph * mph),
  },
  percent: { ...memorable, playsYd: (yd, mph) => yd * (1 + (mph > 0 ? 0.01 : 0.005) * mph) },
  'percent-and-five': {
    confidence: 'published',
    source: 'wind-percent-plus',
    playsYd: (yd, mph) => (mph === 0 ? yd : mph > 0 ? yd * (1 + 0.01 * mph) + 5 : yd * (1 + 0.003 * mph)),
  },
  'yard-a-mile': {
    confidence: 'published',
    source: 'wind-yard',
    playsYd: (yd, mph) => (mph < 0 ? null : yd + mph),
  },
} as const satisfies Record<string, Rule<number>>

/** Rules for the temperature. Source: golf.com, two yards of a drive of 250 for 10 degrees Fahrenheit; the flight of a ball. */
export const warmthRules = {
  'ball-flight': {
    ...flightEvidence,
    playsYd: (yd, warmerC, { per10CWarmer, per10CColder }) =>
      against(yd, ((warmerC > 0 ? per10CWarmer : -per10CColder) * warmerC) / 1000),
  },
  'yards-of-a-drive': {
    confidence: 'published',
    source: 'heat-and-height',
    playsYd: (yd, warmerC) => against(yd, (2 / 250) * ((warmerC * 1.8) / 10)),
  },
} as const satisfies Record<string, Rule<number>>

const feetPerMetre = 1 / 0.3048

/** Rules for the height above the sea. Source: golf.com, 2.5 yards of a drive of 250 for 1,000 feet; healthfully.com. */
export const heightRules = {
  'ball-flight': {
    ...flightEvidence,
    playsYd: (yd, higherM, { per1000mHigher }) => against(yd, (per1000mHigher * higherM) / 100_000),
  },
  'yards-of-a-drive': {
    confidence: 'published',
    source: 'heat-and-height',
    playsYd: (yd, higherM) => against(yd, (2.5 / 250) * ((higherM * feetPerMetre) / 1000)),
  },
  'tenth-for-5000-feet': {
    confidence: 'published',
    source: 'height-percent',
    playsYd: (yd, higherM) => against(yd, 0.1 * ((higherM * feetPerMetre) / 5000)),
  },
} as const satisfies Record<string, Rule<number>>

/** One number for the day: how much longer every shot plays, in percent; below 0 it plays shorter. */
export interface DayNumber {
  readonly percent: number
  /** What it is by the rules that say least and most. */
  readonly least: number
  readonly most: number
  readonly rule: 'ball-flight'
}

/** A proposal for a shot of a length, by the flight of the ball, with the range of the other rules. */
export function dayNumber(day: Day, distanceYd: number, flight: Flight): DayNumber {
  const percents = [
    percentsBy(windRules, day.headMph, distanceYd, flight),
    percentsBy(warmthRules, day.warmerC, distanceYd, flight),
    percentsBy(heightRules, day.higherM, distanceYd, flight),
  ]
  const sum = (of: (each: Percents) => number): number => percents.reduce((total, each) => total + of(each), 0)
  return {
    percent: sum(({ usual }) => usual),
    least: sum(({ least }) => least),
    most: sum(({ most }) => most),
    rule: 'ball-flight',
  }
}

interface Percents {
  readonly usual: number
  readonly least: number
  readonly most: number
}

function percentsBy(
  rules: Readonly<Record<string, Rule<number>>>,
  input: number,
  distanceYd: number,
  flight: Flight,
): Percents {
  const all = Object.values(rules).flatMap(rule => {
    const plays = rule.playsYd(distanceYd, input, flight)
    return plays === null ? [] : [100 * (plays / distanceYd - 1)]
  })
  return { usual: all[0] ?? 0, least: Math.min(...all), most: Math.max(...all) }
}

/** What a distance plays like on a day of that number. */
export const playsOnDayYd = (distanceYd: number, percent: number): number => distanceYd * (1 + percent / 100)
