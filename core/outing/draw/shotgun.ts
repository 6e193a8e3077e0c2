import { err, ok, type Result } from '#core/values/result.ts'

/** Where a group of a shotgun start begins: A is first off the tee, B follows. */
export interface ShotgunPlace {
  readonly hole: number
  readonly letter: 'A' | 'B'
}

const holes = 18

/**
 * Starting places for so many groups: one group at each hole, then second groups at the holes and in the order that the
 * organiser names; `too-few-holes` when those do not suffice.
 * Common practice; a seniors' association's instructions, 2016, second-hand.
 */
export function shotgunPlaces(
  groups: number,
  doubledHoles: readonly number[],
): Result<ShotgunPlace[], 'too-few-holes'> {
  const firsts = Array.from({ length: holes }, (_, at): ShotgunPlace => ({ hole: at + 1, letter: 'A' }))
  const places = [...firsts, ...doubledHoles.map((hole): ShotgunPlace => ({ hole, letter: 'B' }))]
  return groups > places.length ? err('too-few-holes') : ok(places.slice(0, groups))
}
