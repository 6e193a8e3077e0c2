import type { GameResult, MatchLine, Tie, TotalLine } from '#core/formats/game-result.ts'
import { formatMatchResult, type MatchResult } from '#core/formats/match-state.ts'
import type { MeasureUnit } from '#core/formats/parts.ts'
import type { PartLine } from '#core/formats/parts-result.ts'
import type { ShareLine } from '#core/formats/shares.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import { unreachable } from '#core/values/assert.ts'
import { aheadIn, matchWords } from '../../parts/match-view.ts'
import { partTitle } from '../../parts/part-title.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatList, formatOrdinal, formatShare } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import {
  allowanceWords,
  gameTitle,
  gapWords,
  overParWords,
  overWords,
  placeWords,
  progressWords,
  totalWords,
  unitWord,
} from '../board/board-view.ts'
import { tieLines } from '../board/TiesOnBoard.tsx'
import { tallyWords } from '../hole/stands.ts'

/** One game's result: what was played and how it came out, one line a side, a match or a part. */
export interface GameLines {
  readonly id: Game['id']
  /** "Stableford, 95 %, points" */
  readonly title: string
  readonly lines: readonly string[]
}

/** Countbacks are told as far down as people ask about them. */
const lastPlaceTold = 3

/** Every game of the outing in trade words, in the order of the board. */
export const gameLines = (outing: Outing, results: Results): readonly GameLines[] =>
  outing.games.flatMap(game => {
    const result = results.games.get(game.id)
    if (!result) return []
    const title = [gameTitle(game.format), allowanceWords(game), overWords(outing, game), unitWord(result)]
    return [{ id: game.id, title: formatList(title.filter(Boolean)), lines: linesOf(outing, result) }]
  })

function linesOf(outing: Outing, result: GameResult): readonly string[] {
  switch (result.kind) {
    case 'gap':
      return result.gaps.map(gap => gapWords(outing, gap))
    case 'total':
      return [
        ...result.lines.map(line => totalLine(outing, line, result.unit)),
        ...result.ties.filter(tie => isTold(tie, result.lines)).flatMap(tie => tieLines(outing, tie)),
        ...result.gaps.map(gap => gapWords(outing, gap)),
      ]
    case 'match':
      return result.matches.map(match => withTwoScores(matchSentence(outing, match), match.unsettled))
    case 'shares':
      return [
        ...result.lines.map(line => shareLine(outing, line)),
        ...(result.unclaimed > 0 ? [say('skins-unclaimed', { n: result.unclaimed })] : []),
        ...(result.sharedOut > 0 ? [say('skins-shared-out', { n: result.sharedOut })] : []),
        ...result.unsettled.map(key => say('board-two-scores', { hole: holeOf(key) })),
        ...result.gaps.map(gap => gapWords(outing, gap)),
      ]
    case 'parts':
      return [
        ...result.lines.map(line => shareLine(outing, line)),
        ...result.parts.flatMap(part => partLine(outing, part)),
        ...result.unsettled.map(key => say('board-two-scores', { hole: holeOf(key) })),
      ]
    default:
      return unreachable(result)
  }
}

const holeOf = (key: string): string => key.split('/')[0] ?? ''

const withPlace = (line: Pick<TotalLine, 'place' | 'isTied'>, what: string): string =>
  line.place === null ? what : say('result-place', { place: placeWords(line), what })

/** "2= Alder 33", "1 Birch 71 (−1)", "Rowan, no return", "1 Cedar 14, through 8" */
function totalLine(outing: Outing, line: TotalLine, unit: MeasureUnit): string {
  const side = sideName(outing, line.side)
  const total = line.total === null || line.through === 0 ? side : say('result-total', { side, total: sum(line, unit) })
  const isOver = line.isFinished && line.unsettled.length === 0 && line.place !== null
  return isOver
    ? withPlace(line, total)
    : say('result-but', { line: withPlace(line, total), state: progressWords(line) })
}

function sum(line: TotalLine, unit: MeasureUnit): string {
  const over = overParWords(line)
  return [totalWords(line, unit), over && say('result-over', { over })].filter(Boolean).join(' ')
}

const shareLine = (outing: Outing, line: ShareLine): string =>
  withPlace(line, say('result-total', { side: sideName(outing, line.side), total: formatShare(line.total) }))

function isTold({ sides }: Tie, lines: readonly TotalLine[]): boolean {
  const first = sides[0]?.join()
  const place = lines.find(({ side }) => side.join() === first)?.place ?? null
  return place !== null && place <= lastPlaceTold
}

/** "Alder & Cedar beat Birch & Rowan 3 & 2", "Alder and Birch halved", "Alder v Birch: Alder 2 up, 4 to play". */
export function matchSentence(outing: Outing, match: MatchLine): string {
  const [first = '', second = ''] = match.sides.map(side => sideName(outing, side))
  const { result } = match.state
  if (result === null)
    return say('result-part', { part: say('versus', { first, second }), what: matchWords(outing, match) })
  const isSecond = aheadIn(match) === match.sides[1]
  return endWords(result, isSecond ? second : first, isSecond ? first : second)
}

function endWords(result: MatchResult, winner: string, loser: string): string {
  switch (result.kind) {
    case 'halved':
    case 'both-disqualified':
      return say(`result-${result.kind}`, { first: winner, second: loser })
    case 'conceded':
    case 'disqualified':
    case 'agreed':
      return say(`result-beat-${result.kind}`, { winner, loser })
    case 'won-on-extra-hole':
      return say('result-beat-at', { winner, loser, hole: formatOrdinal(result.hole) })
    default:
      return say('result-beat', { winner, loser, by: formatMatchResult(result) })
  }
}

function withTwoScores(line: string, unsettled: MatchLine['unsettled']): string {
  if (unsettled.length === 0) return line
  return say('result-but', { line, state: say('board-two-scores', { hole: formatList(unsettled.map(holeOf)) }) })
}

/** "Front nine: Alder won 2 & 1"; nothing for a part that has not begun. */
function partLine(outing: Outing, part: PartLine): string[] {
  const isBegun = part.match ? part.match.state.holesPlayed > 0 : part.tallies.some(({ points }) => points > 0)
  if (!isBegun) return []
  const what = part.match ? matchWords(outing, part.match) : tallyWords(outing, part.tallies)
  return [say('result-part', { part: partTitle(part), what })]
}
