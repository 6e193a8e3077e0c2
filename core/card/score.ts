/** What became of a ball on a hole: holed in so many strokes, picked up, or not played. The result alone, no more. */
export type HoleScore = number | 'picked-up' | 'not-played'

export const unholedScores = ['picked-up', 'not-played'] as const satisfies readonly HoleScore[]

/** A hole of the round as played: lap 2 is an extra hole or the same nine again. */
export interface PlayedHole {
  readonly hole: number
  readonly lap: number
}

/** `hole/lap`, for maps. */
export type HoleKey = `${number}/${number}`

/** Every card of a field asks for the same few: made once. */
const known = new Map<number, HoleKey>()

export function holeKey({ hole, lap }: PlayedHole): HoleKey {
  const number = lap * 100 + hole
  const found = known.get(number)
  if (found !== undefined) return found
  const key: HoleKey = `${hole}/${lap}`
  if (hole < 100 && known.size < 1000) known.set(number, key)
  return key
}
