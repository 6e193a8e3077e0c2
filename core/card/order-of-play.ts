import { holeKey, type PlayedHole } from './score.ts'

export interface OrderOfPlay {
  readonly round: readonly PlayedHole[]
  readonly extra: readonly PlayedHole[]
}

/** The order of play as a list of (hole, lap): `length` scheduled holes, then extra ones. A hole named twice counts once. */
export function orderOfPlay(listed: readonly (readonly [number, number])[] | null, length: 9 | 18): OrderOfPlay {
  if (listed === null) return { round: roundFrom(1, length), extra: [] }
  const holes = new Map(listed.map(([hole, lap]) => [holeKey({ hole, lap }), { hole, lap }]))
  const all = [...holes.values()]
  return { round: all.slice(0, length), extra: all.slice(length) }
}

/** `count` holes from `start`, going round after the course's `last`; a second time round is lap 2. */
export const roundFrom = (start: number, count: 9 | 18, last: number = count): PlayedHole[] =>
  Array.from({ length: count }, (_, step) => ({
    hole: ((start - 1 + step) % last) + 1,
    lap: Math.floor(step / last) + 1,
  }))
