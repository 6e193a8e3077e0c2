/** Holes up for the first side in each part. */
export interface ThreePartMatch {
  readonly front: number
  readonly back: number
  readonly overall: number
  /** Parts won by the first side, won by the second, and halved: three in all. */
  readonly pointsFirst: number
  readonly pointsSecond: number
  readonly halved: number
}

/**
 * A match in three parts of equal worth: front nine, back nine, all eighteen. Every hole is played, even where a part is
 * decided; a level part is halved. Without presses.
 * Common practice; described by a regional association's magazine, 2015, second-hand.
 */
export function threePartMatch(holes: readonly (1 | 0 | -1)[]): ThreePartMatch {
  const front = holesUp(holes.slice(0, 9))
  const back = holesUp(holes.slice(9))
  const parts = [front, back, front + back]
  return {
    front,
    back,
    overall: front + back,
    pointsFirst: parts.filter(up => up > 0).length,
    pointsSecond: parts.filter(up => up < 0).length,
    halved: parts.filter(up => up === 0).length,
  }
}

const holesUp = (holes: readonly number[]): number => holes.reduce((sum, hole) => sum + hole, 0)
