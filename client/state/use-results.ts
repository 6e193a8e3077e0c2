import type { Levels } from '#core/outing/levels.ts'
import type { Results } from '#core/outing/results.ts'
import { type Reckoned, resultsAfter } from '#core/outing/results-of.ts'
import { useOuting } from './use-outing.ts'

let last: Reckoned | null = null

/** What these levels come to: made when a screen asks, and again only as far as the scores since then enter. */
export function resultsOn(levels: Levels): Results {
  if (last?.levels !== levels) last = { levels, results: resultsAfter(last, levels) }
  return last.results
}

/** The results of the open outing, for the screens that come later; null while it is read. */
export function useResults(): Results | null {
  const levels = useOuting(store => store.levels)
  return levels && resultsOn(levels)
}
