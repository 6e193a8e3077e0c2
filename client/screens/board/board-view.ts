import type { FormatName } from '#core/formats/format-names.ts'
import type { GameGap, GameResult, TotalLine } from '#core/formats/game-result.ts'
import type { MeasureUnit } from '#core/formats/parts.ts'
import { formatTable } from '#core/formats/table.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import { formatList, formatOver } from '../../words/figures.ts'
import { say, sayCode } from '../../words/say-any.ts'

export const gameTitle = (format: FormatName | null): string => (format ? say(format) : say('gap-no format'))

/** "95 %"; empty where the format takes no allowance. */
export function allowanceWords({ format, methods: { allowancePercent } }: Game): string {
  if (allowancePercent === null || format === null) return ''
  const takesOne = formatTable[format].settings.includes('allowancePercent')
  return takesOne ? say('board-allowance', { percent: allowancePercent }) : ''
}

/** "holes 10 to 18", by the order of play of the game's first group; empty for a game over the whole round. */
export function overWords(outing: Outing, { sides, holes }: Game): string {
  if (holes === null) return ''
  const ball = outing.balls.get(sides?.flat()[0] ?? ('' as never))
  const round = outing.groups.get(ball?.group ?? ('' as never))?.round ?? []
  return say('board-over', {
    from: holes.from?.[0] ?? round[0]?.hole ?? 1,
    to: holes.to?.[0] ?? round.at(-1)?.hole ?? outing.length,
  })
}

/** What the figures of a game are: "points", "strokes"; empty for a match. */
export function unitWord(result: GameResult): string {
  if (result.kind === 'total' || result.kind === 'shares')
    return say(result.unit === 'skins' ? 'short-skins' : result.unit)
  return result.kind === 'parts' ? say('points') : ''
}

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
