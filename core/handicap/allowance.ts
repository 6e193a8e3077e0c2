import { unreachable } from '#core/values/assert.ts'

/**
 * What part of each player's Course Handicap counts, in percent: the recommended figures for a field of medium size,
 * which an association or a committee may change.
 * Source: Rules of Handicapping, Appendix C; USGA and R&A; 2024.
 */
export const playerAllowances = {
  'individual-stroke-play': 95,
  'individual-stableford': 95,
  'individual-par-bogey': 95,
  'individual-maximum-score': 95,
  'four-ball-stroke-play': 85,
  'four-ball-stableford': 85,
  'four-ball-par-bogey': 90,
  'best-1-of-4': 75,
  'best-2-of-4': 85,
  'best-3-of-4': 100,
  'all-4-of-4': 100,
  'best-1-of-4-par-bogey': 75,
  'best-2-of-4-par-bogey': 80,
  'best-3-of-4-par-bogey': 90,
  'all-4-of-4-par-bogey': 100,
  'individual-match': 100,
  'four-ball-match': 90,
  'total-of-2-match': 100,
} as const satisfies Record<string, number>
export type PlayerAllowance = keyof typeof playerAllowances

/**
 * What part of each partner's Course Handicap goes into the handicap of a side that plays one ball, in percent, the
 * lowest Course Handicap first; the same in stroke play and in a match.
 * Source: Rules of Handicapping, Appendix C; USGA and R&A; 2024.
 */
export const sideAllowances = {
  foursomes: [50, 50],
  greensomes: [60, 40],
  chapman: [60, 40],
  'scramble-of-2': [35, 15],
  'scramble-of-3': [30, 20, 10],
  'scramble-of-4': [25, 20, 15, 10],
} as const satisfies Record<string, readonly number[]>
export type SideAllowance = keyof typeof sideAllowances

/** Whether individual stroke play follows the size of the field; the committee chooses. */
export const fieldSizeMethods = ['as-for-medium-field', 'full-in-small-field'] as const
export type FieldSizeMethod = (typeof fieldSizeMethods)[number]

/** Players from which a field is no longer small. From memory: "about 30". */
export const smallFieldBelow = 30

/**
 * The allowance of individual stroke play by size of field, in percent: 95 for a medium field, the whole handicap where
 * fewer than about 30 play.
 * Source: Rules of Handicapping, Appendix C and its clarification C/1; R&A and USGA; 2024. That the table may be adjusted
 * to the field was read; the limit and the 100 are from memory.
 */
export function individualStrokePlayAllowance(method: FieldSizeMethod, fieldSize: number): number {
  switch (method) {
    case 'as-for-medium-field':
      return playerAllowances['individual-stroke-play']
    case 'full-in-small-field':
      return fieldSize < smallFieldBelow ? 100 : playerAllowances['individual-stroke-play']
    default:
      return unreachable(method)
  }
}
