import type { FormatName } from '#core/formats/format-names.ts'
import type { GameSetting } from '#core/formats/game-methods.ts'
import { formatTable } from '#core/formats/table.ts'

/**
 * What a game of the format lets people set: what has to be set, how an Index becomes a Course Handicap, what
 * becomes of skins that are left, what a short team has, and in a total what splits its ties.
 */
export function settingsOf(format: FormatName): readonly GameSetting[] {
  const { settings } = formatTable[format]
  const ofIndex: readonly GameSetting[] = settings.includes('nineHoleIndex') ? ['courseHandicap'] : []
  const ofSkins: readonly GameSetting[] = settings.includes('skins') ? ['skinsLeft'] : []
  const ofTeams: readonly GameSetting[] = settings.includes('countingBalls') ? ['shortTeam'] : []
  const ofTies: readonly GameSetting[] = isTotal(format) ? ['ties'] : []
  return [...ofIndex, ...settings, ...ofSkins, ...ofTeams, ...ofTies]
}

/** True for a format that makes a table of sums, whose ties can be split. */
export const isTotal = (format: FormatName): boolean => formatTable[format].contest === 'total'
