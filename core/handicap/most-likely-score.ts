/** Where a ball lay when its hole was given up. Every distance is to the hole, never to the edge of the green. */
export const ballPlaces = ['on-green-within-5-feet', 'within-20-yards', 'further'] as const
export type BallPlace = (typeof ballPlaces)[number]

const strokesToAdd: Record<BallPlace, readonly number[]> = {
  'on-green-within-5-feet': [1],
  'within-20-yards': [2, 3],
  further: [3, 4],
}

/**
 * The scores that a player may put down for a hole started but not holed out, by the player's own judgement where there
 * are two. The most allowed on the hole is applied afterwards.
 * Source: Rules of Handicapping, rule 3.3 and clarification 3.3/1; 2024.
 */
export const mostLikelyScores = (strokesTaken: number, place: BallPlace): number[] =>
  strokesToAdd[place].map(more => strokesTaken + more)

export const placeUnits = ['feet', 'yards', 'metres'] as const
export type PlaceUnit = (typeof placeUnits)[number]

/** The text says 20 yards or 20 metres, so the unit that was used decides. */
const nearUpTo: Record<PlaceUnit, number> = { feet: 60, yards: 20, metres: 20 }

/** The place of a ball that does not lie on the green within five feet of the hole. */
export const ballPlaceAt = (distanceToHole: number, unit: PlaceUnit): BallPlace =>
  distanceToHole <= nearUpTo[unit] ? 'within-20-yards' : 'further'
