import { unreachable } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundGame } from './game-input.ts'
import type { MeasureUnit } from './parts.ts'

/** What penalties on the round do to a side's total, its balls' all together; points and holes are taken off. */
export const penaltyOnRound = ({ happenings, measure }: SoundGame, side: readonly BallId[]): number =>
  happenings.penalties
    .filter(({ ball, hole }) => hole === null && side.includes(ball))
    .reduce((sum, { strokes }) => sum + penaltyIn(measure.unit, strokes), 0)

/**
 * A penalty on the round in the unit of the game: its strokes, as many points, or a hole for a general penalty of two
 * strokes or less.
 * Source: Rules of Golf, rules 21.1c and 21.3c (points and holes are taken off the round); R&A and USGA; 2019 and 2023.
 * The amounts: from memory.
 */
export function penaltyIn(unit: MeasureUnit, strokes: number): number {
  switch (unit) {
    case 'strokes':
      return strokes
    case 'points':
      return -strokes
    case 'holes':
      return -Math.ceil(strokes / 2)
    default:
      return unreachable(unit)
  }
}
