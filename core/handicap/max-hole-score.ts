const overParWithoutIndex = 5
const overParAtMost = 5
const highestIndexStrokes = 54

/**
 * The most that a hole counts for handicapping: net double bogey (par + 2 + strokes received, negative where a plus
 * player gives back), and par + 5 before a Handicap Index exists (`courseHandicap` is `null`) or where a Course Handicap
 * above 54 gives four strokes or more on the hole. The Course Handicap is the full one, whole; never a Playing Handicap.
 * Source: Rules of Handicapping, rule 3.1; R&A; 2020 and 2024.
 */
export function maxHoleScore(par: number, courseHandicap: number | null, strokesReceived: number): number {
  if (courseHandicap === null) return par + overParWithoutIndex
  if (courseHandicap > highestIndexStrokes && strokesReceived >= 4) return par + overParAtMost
  return netDoubleBogey(par, strokesReceived)
}

/** Par + 2 + strokes received: the lowest score that earns no Stableford point. */
export const netDoubleBogey = (par: number, strokesReceived: number): number => par + 2 + strokesReceived

/** Par + strokes received: the score of a hole not played, in the 2020 text and where an association still allows it. */
export const netPar = (par: number, strokesReceived: number): number => par + strokesReceived
