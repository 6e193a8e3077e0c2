import type { Evidence } from '#core/plan/evidence.ts'
import type { ClubClass } from '#core/plan/spread/spread-model.ts'

/** How one shot's carry answers to air and ground; shares of the carry in percent where nothing else is said. */
export interface Flight {
  readonly carryYd: number
  readonly descentDeg: number
  readonly per10CWarmer: number
  readonly per10CColder: number
  readonly per1000mHigher: number
  /** The share that a mile an hour of headwind takes, and what its square takes, head or tail. */
  readonly headPerMph: number
  readonly windPerMphSquared: number
  readonly driftAt10MphYd: number
  readonly gripDownPerInch: number
}

export const flightEvidence: Evidence = { confidence: 'derived', source: 'ball-flight' }

/**
 * Shots of usual launch flown through still and moving air. Source: derived with the drag and lift of Smits and Smith 1994;
 * the wind of the drive is on the high side of what else is published.
 */
export const flights: readonly (Flight & { readonly kind: 'drive' | 'mid-iron' | 'wedge' })[] = [
  {
    kind: 'drive',
    carryYd: 221,
    descentDeg: 38,
    per10CWarmer: 2.1,
    per10CColder: -1.7,
    per1000mHigher: 6.2,
    headPerMph: 0.00786,
    windPerMphSquared: 0.000107,
    driftAt10MphYd: 16.4,
    gripDownPerInch: -1.9,
  },
  {
    kind: 'drive',
    carryYd: 181,
    descentDeg: 34,
    per10CWarmer: 1.5,
    per10CColder: -1.3,
    per1000mHigher: 4.4,
    headPerMph: 0.0054,
    windPerMphSquared: 0.000128,
    driftAt10MphYd: 11.3,
    gripDownPerInch: -2.3,
  },
  {
    kind: 'drive',
    carryYd: 147,
    descentDeg: 30,
    per10CWarmer: 1.0,
    per10CColder: -0.8,
    per1000mHigher: 2.6,
    headPerMph: 0.0031,
    windPerMphSquared: 0.000131,
    driftAt10MphYd: 7.8,
    gripDownPerInch: -2.7,
  },
  {
    kind: 'mid-iron',
    carryYd: 182,
    descentDeg: 45,
    per10CWarmer: 2.6,
    per10CColder: -2.0,
    per1000mHigher: 7.6,
    headPerMph: 0.01047,
    windPerMphSquared: 0.000185,
    driftAt10MphYd: 18.5,
    gripDownPerInch: -1.5,
  },
  {
    kind: 'mid-iron',
    carryYd: 152,
    descentDeg: 40,
    per10CWarmer: 1.8,
    per10CColder: -1.5,
    per1000mHigher: 5.2,
    headPerMph: 0.00701,
    windPerMphSquared: 0.000197,
    driftAt10MphYd: 12.7,
    gripDownPerInch: -2.0,
  },
  {
    kind: 'wedge',
    carryYd: 138,
    descentDeg: 49,
    per10CWarmer: 2.6,
    per10CColder: -2.1,
    per1000mHigher: 7.8,
    headPerMph: 0.01203,
    windPerMphSquared: 0.000241,
    driftAt10MphYd: 17.2,
    gripDownPerInch: -1.4,
  },
  {
    kind: 'wedge',
    carryYd: 113,
    descentDeg: 46,
    per10CWarmer: 1.9,
    per10CColder: -1.6,
    per1000mHigher: 5.5,
    headPerMph: 0.0082,
    windPerMphSquared: 0.00024,
    driftAt10MphYd: 11.7,
    gripDownPerInch: -1.9,
  },
]

const wedgeYd = 125

/** The flight of a carry with a club, on a straight line between the two that it lies between. */
export function flightOf(clubClass: ClubClass, carryYd: number): Flight {
  const kind = clubClass === 'driver' || clubClass === 'wood' ? 'drive' : carryYd < wedgeYd ? 'wedge' : 'mid-iron'
  const rows = flights.filter(each => each.kind === kind).sort((a, b) => a.carryYd - b.carryYd)
  const [first, last] = [rows[0], rows.at(-1)]
  if (first === undefined || last === undefined) throw new Error('every kind has rows')
  const above = rows.find(row => row.carryYd >= carryYd) ?? last
  const below = rows.filter(row => row.carryYd <= carryYd).at(-1) ?? first
  if (above === below) return above
  const along = (carryYd - below.carryYd) / (above.carryYd - below.carryYd)
  const between = (name: keyof Flight): number => below[name] + along * (above[name] - below[name])
  return {
    carryYd,
    descentDeg: between('descentDeg'),
    per10CWarmer: between('per10CWarmer'),
    per10CColder: between('per10CColder'),
    per1000mHigher: between('per1000mHigher'),
    headPerMph: between('headPerMph'),
    windPerMphSquared: between('windPerMphSquared'),
    driftAt10MphYd: between('driftAt10MphYd'),
    gripDownPerInch: between('gripDownPerInch'),
  }
}
