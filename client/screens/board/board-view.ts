import type { FormatName } from '#core/formats/format-names.ts'
import type { GameGap, TotalLine } from '#core/formats/game-result.ts'
import type { MeasureUnit } from '#core/formats/parts.ts'
import type { Outing } from '#core/outing/outing.ts'
import { formatList, formatOver } from '../../words/figures.ts'
import { say, sayCode } from '../../words/say.ts'

export const gameTitle = (format: FormatName | null): string => (format ? say(format) : say('gap-no format'))

/** "1=", "3", or nothing before a hole is played and without a return. */
export function placeWords({ place, isTied }: Pick<TotalLine, 'place' | 'isTied'>): string {
  if (place === null) return ''
  return isTied ? `${place}=` : String(place)
}

/** "through 8", "finished", "no return", "hole 8: two scores". */
export function progressWords(line: TotalLine): string {
  const [open, ...more] = line.unsettled.map(key => key.split('/')[0] ?? '')
  if (open !== undefined) return say('board-two-scores', { hole: formatList([open, ...more]) })
  if (line.disqualified) return say('board-disqualified')
  if (line.withdrawn) return say('board-withdrawn')
  if (line.isNoReturn) return say('no-return')
  if (line.through === 0) return say('not-started')
  return line.isFinished ? say('finished') : say('through-n', { n: line.through })
}

/** The total of a line: holes carry their sign. */
export function totalWords({ total }: TotalLine, unit: MeasureUnit): string {
  if (total === null) return say('none-yet')
  if (unit !== 'holes' || total === 0) return String(total)
  return total > 0 ? say('over-n', { n: total }) : say('under-n', { n: -total })
}

/** "+5" beside a stroke total; empty with points and before a hole counts. */
export function overParWords(line: TotalLine): string {
  if (line.overPar === null || line.through === 0) return ''
  return line.overPar === 0 ? say('par-even') : formatOver(line.overPar)
}

/** Why a game waits, with the name of the ball that is the reason. */
export const gapWords = (outing: Outing, gap: GameGap): string =>
  sayCode('gap-', gap.code, 'gap-no format', {
    ball: (gap.ball && outing.balls.get(gap.ball)?.name) || say('gap-everybody'),
    setting: gap.setting,
  })
