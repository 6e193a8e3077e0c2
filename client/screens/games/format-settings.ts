import { total } from '#core/formats/contests/total.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import type { GameSetting } from '#core/formats/game-methods.ts'
import { formatTable } from '#core/formats/table.ts'

/**
 * What a game of the format lets people set: what has to be set, how an Index becomes a Course Handicap, and in a total
 * what splits its ties.
 */
export function settingsOf(format: FormatName): readonly GameSetting[] {
  const { settings, contest } = formatTable[format]
  const ofIndex: readonly GameSetting[] = settings.includes('nineHoleIndex') ? ['courseHandicap'] : []
  const ofTies: readonly GameSetting[] = contest === total ? ['ties'] : []
  return [...ofIndex, ...settings, ...ofTies]
}
