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

export const holeKey = ({ hole, lap }: PlayedHole): HoleKey => `${hole}/${lap}`
