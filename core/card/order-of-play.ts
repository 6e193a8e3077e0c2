import { holeKey, type PlayedHole } from './score.ts'

export interface OrderOfPlay {
  readonly round: readonly PlayedHole[]
  readonly extra: readonly PlayedHole[]
}

/** The order of play as a list of (hole, lap): `length` scheduled holes, then extra ones. A hole named twice counts once. */
export function orderOfPlay(listed: readonly (readonly [number, number])[] | null, length: 9 | 18): OrderOfPlay {
  if (listed === null) return asPrinted[length]
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

/** The card's own order: one list, so that what hangs on it is made once for all who play it. */
const asPrinted: Readonly<Record<9 | 18, OrderOfPlay>> = {
  9: { round: roundFrom(1, 9), extra: [] },
  18: { round: roundFrom(1, 18), extra: [] },
}
