import type { Club } from '#core/plan/clubs.ts'
import type { Evidence } from '#core/plan/evidence.ts'
import { mixed, mixedByRatio } from '#core/plan/strokes/skill.ts'
import type { Lie } from '#core/plan/strokes/stroke-table.ts'

/** How one golfer's full shots scatter: sideways by an angle, in length by a share, and some of them mishit. */
interface Scatter {
  readonly angleDeg: number
  readonly driverAngleDeg: number
  readonly lengthShare: number
  readonly sideYd: number
  readonly lengthYd: number
  readonly mishitShare: number
  /** How far short of what was meant the usual golfer's good shots finish, as a share. */
  readonly shortShare: number
}

/** Source: derived from Broadie's column at 150 yards, James and Rees 2008 and the drives; the form and rest our own. */
export const scatter = {
  confidence: 'derived',
  source: 'worked-out',
  tour: {
    angleDeg: 1.95,
    driverAngleDeg: 3.4,
    lengthShare: 0.036,
    sideYd: 0.85,
    lengthYd: 1.15,
    mishitShare: 0.003,
    shortShare: 0.01,
  },
  golfer90: {
    angleDeg: 4.4,
    driverAngleDeg: 6.5,
    lengthShare: 0.07,
    sideYd: 1.4,
    lengthYd: 2.3,
    mishitShare: 0.055,
    shortShare: 0.06,
  },
} as const satisfies Evidence & Record<string, Scatter | string>

/** What becomes of a mishit shot of a length. Our own: no figures are published. */
export const mishits = {
  confidence: 'own',
  source: 'ours',
  lengthMeanShare: 0.55,
  lengthSdShare: 0.15,
  sideFactor: 1.2,
} as const satisfies Evidence & Record<string, unknown>

/** How much wider shots scatter from a lie, for the tour and for a golfer who goes round in 90. Our own, after James and Rees. */
const lieFactors: Readonly<Record<Lie, readonly [tour: number, golfer90: number]>> = {
  tee: [1, 1],
  fairway: [1, 1],
  green: [1, 1],
  rough: [1.6, 1.35],
  sand: [1.9, 1.7],
  recovery: [1.3, 1.3],
}

/** From a tee the pattern is tighter and about round. Source: Broadie's column; the amounts our own. */
const teeFactors = { angle: 0.92, length: 0.88, mishit: 0.75 }

/** How much of the way from an iron's angle to the driver's. Our own. */
const angleShares = { driver: 1, wood: 0.75, hybrid: 0.45, iron: 0 } as const
export type ClubClass = keyof typeof angleShares

/** What a club is, for its scatter and its roll; a wedge is an iron. */
export function classOf(club: Club): ClubClass {
  if (club === 'driver') return 'driver'
  if (club.startsWith('wood')) return 'wood'
  return club.startsWith('hybrid') ? 'hybrid' : 'iron'
}

/** Where shots finish about the point they are meant for, in yards. */
export interface Spread {
  readonly sideSdYd: number
  readonly lengthSdYd: number
  /** To the right of what was meant, of good shots. */
  readonly sideBiasYd: number
  readonly mishitShare: number
}

/** A full shot to be judged: how good the golfer is, with what, from where, and how much wider than usual it is taken. */
export interface SpreadOf {
  readonly skill: number
  readonly clubClass: ClubClass
  readonly lie: Lie
  readonly scale: number
}

/** The default spread of a shot of a length; own figures come on top (`own-figures.ts`). Source: derived; see `scatter`. */
export function spreadOf({ skill, clubClass, lie, scale }: SpreadOf, lengthYd: number): Spread {
  const { tour, golfer90 } = scatter
  const by = (name: keyof Scatter): number => mixedByRatio(tour[name], golfer90[name], skill)
  const ironDeg = by('angleDeg')
  const onTee = lie === 'tee' ? teeFactors : noFactors
  const angleDeg = (ironDeg + angleShares[clubClass] * (by('driverAngleDeg') - ironDeg)) * onTee.angle
  const factor = scale * mixed(...lieFactors[lie], Math.min(skill, 1))
  return {
    sideSdYd: factor * (by('sideYd') + lengthYd * Math.tan((angleDeg * Math.PI) / 180)),
    lengthSdYd: factor * (by('lengthYd') + lengthYd * by('lengthShare') * onTee.length),
    sideBiasYd: 0,
    mishitShare: mixed(tour.mishitShare, golfer90.mishitShare, skill) * onTee.mishit,
  }
}

const noFactors = { angle: 1, length: 1, mishit: 1 }

/** How far short the usual golfer finishes who means the full number, mishits left out. */
export const usualShortYd = (skill: number, lengthYd: number): number =>
  lengthYd * mixed(scatter.tour.shortShare, scatter.golfer90.shortShare, skill)
