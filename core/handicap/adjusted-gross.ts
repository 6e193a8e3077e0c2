import { must } from '#core/values/assert.ts'
import { maxHoleScore, netPar } from './max-hole-score.ts'
import { allocateStrokes } from './stroke-allocation.ts'

/** What a hole not played counts; the editions differ. */
export const notPlayedMethods = ['net-par', 'left-out'] as const
export type NotPlayedMethod = (typeof notPlayedMethods)[number]

/** One hole of a round for handicapping. */
export interface RatedHole {
  readonly par: number
  readonly strokeIndex: number
  /** Strokes holed in, or the most likely score; `started` without one counts the most allowed. */
  readonly score: number | 'started' | 'not-played'
}

/** Every list is in the order of the holes given. */
export interface AdjustedGross {
  readonly maxPerHole: readonly number[]
  /** What each hole counts; `null` for one left out. */
  readonly counted: readonly (number | null)[]
  readonly total: number
  readonly holesLeftOut: number
}

/**
 * Adjusted gross score: no hole above its maximum. The Course Handicap is the full one, whole; `null` before an Index.
 * Holes not played count net par, or are left out, so that an expected score takes their place in the differential.
 * Source: Rules of Handicapping, rules 3.1 to 3.3; R&A; 2020 and 2024. Net par: 2020, and 2024 where the association
 * allows it (holes out of play for everybody). Left out: 2024. Net par of a player without an Index is par: own reading.
 */
export function adjustedGross(
  holes: readonly RatedHole[],
  courseHandicap: number | null,
  notPlayed: NotPlayedMethod,
): AdjustedGross {
  const strokes = allocateStrokes(
    courseHandicap ?? 0,
    holes.map(hole => hole.strokeIndex),
  )
  const received = (at: number): number => must(strokes[at], 'adjustedGross: a hole of the round')
  const maxPerHole = holes.map(({ par }, at) => maxHoleScore(par, courseHandicap, received(at)))
  const counted = holes.map(({ par, score }, at) => {
    const most = must(maxPerHole[at], 'adjustedGross: a hole of the round')
    if (score === 'started') return most
    if (score === 'not-played') return notPlayed === 'net-par' ? netPar(par, received(at)) : null
    return Math.min(score, most)
  })
  return {
    maxPerHole,
    counted,
    total: counted.reduce<number>((sum, each) => sum + (each ?? 0), 0),
    holesLeftOut: counted.filter(each => each === null).length,
  }
}
