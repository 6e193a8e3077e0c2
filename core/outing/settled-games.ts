import type { BallStrokes, GameResult, Tie, TotalLine } from '#core/formats/game-result.ts'
import { must, unreachable } from '#core/values/assert.ts'
import { formatDecimal } from '#core/values/decimal.ts'
import { type Fraction, roundHalfUp } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import { methodsMeant } from './game-settings.ts'
import type { Game, Outing } from './outing.ts'
import type { Results } from './results.ts'
import type {
  SettledCourseHandicap,
  SettledGame,
  SettledGameHead,
  SettledLine,
  SettledStrokes,
  SettledTie,
} from './settle-output-games.ts'
import { settledMatch } from './settled-match.ts'
import { settledParts } from './settled-parts.ts'
import { settledShares } from './settled-shares.ts'
import { namesOf, settledAt, settledHole, sideHole } from './settled-side.ts'

/** Every game with its settings and what it comes to. */
export const settledGames = (outing: Outing, results: Results): SettledGame[] =>
  outing.games.map(game => settledGame(outing, game, must(results.games.get(game.id), 'every game has a result')))

function settledGame(outing: Outing, game: Game, result: GameResult): SettledGame {
  const head = headOf(game)
  switch (result.kind) {
    case 'gap':
      return { ...head, kind: 'gap', gaps: result.gaps }
    case 'total':
      return {
        ...head,
        kind: 'total',
        unit: result.unit,
        strokes: strokesOf(result.strokes),
        lines: result.lines.map(line => settledLine(outing, line)),
        ties: result.ties.map(settledTie),
        gaps: result.gaps,
      }
    case 'match':
      return {
        ...head,
        kind: 'match',
        strokes: strokesOf(result.strokes),
        matches: result.matches.map(line => settledMatch(outing, line)),
      }
    case 'shares':
      return {
        ...head,
        kind: 'shares',
        strokes: strokesOf(result.strokes),
        ...settledShares(outing, result),
        gaps: result.gaps,
      }
    case 'parts':
      return { ...head, kind: 'parts', strokes: strokesOf(result.strokes), ...settledParts(outing, result) }
    default:
      return unreachable(result)
  }
}

function headOf(game: Game): SettledGameHead {
  const methods = game.format === null ? game.methods : methodsMeant(game.format, game.methods)
  return {
    id: game.id,
    group: game.group,
    format: game.format,
    sides: game.sides,
    over: game.holes && { from: settledAt(game.holes.from), to: settledAt(game.holes.to) },
    settings: {
      allowance: methods.allowancePercent,
      rounding: methods.rounding,
      courseHandicap: methods.courseHandicap,
      nineHoleIndex: methods.nineHoleIndex,
      matchStrokes: methods.matchStrokes,
      sideStrokes: methods.sideStrokes,
      handicapShares: methods.handicapShares,
      mixedTees: methods.mixedTees,
      countingBalls: methods.countingBalls,
      shortTeam: methods.shortTeam,
      drawnCard: methods.drawnCard,
      maximumScore: methods.maximumScore,
      skins: methods.skins,
      skinsLeft: methods.skinsLeft,
      presses: methods.presses,
      ties: methods.ties,
    },
  }
}

export const settledCourseHandicap = (exact: Fraction): SettledCourseHandicap => ({
  unrounded: formatDecimal(exact),
  rounded: roundHalfUp(exact),
})

const strokesOf = (strokes: ReadonlyMap<BallId, BallStrokes>): SettledStrokes[] =>
  [...strokes].map(([ball, of]) => ({
    ball,
    courseHandicap: of.courseHandicap === null ? null : settledCourseHandicap(of.courseHandicap),
    playingHandicap: of.playingHandicap,
    strokes: of.strokes,
    forTeePar: of.forTeePar,
    byHole: [...of.byHole].map(([key, count]) => ({ ...settledHole(key), strokes: count })),
  }))

const settledTie = (tie: Tie): SettledTie => ({
  ...tie,
  playOffs: tie.playOffs.map(each => ({ ...each, holes: each.holes.map(settledHole) })),
  working: tie.working.map(({ name, figures }) => ({ name, figures: figures.map(formatDecimal) })),
})

const settledLine = (outing: Outing, line: TotalLine): SettledLine => ({
  side: line.side,
  names: namesOf(outing, line.side),
  place: line.place,
  isTied: line.isTied,
  total: line.total,
  overPar: line.overPar,
  through: line.through,
  isFinished: line.isFinished,
  isNoReturn: line.isNoReturn,
  penalty: line.penalty,
  withdrawn: line.withdrawn,
  disqualified: line.disqualified,
  ghost: line.ghost,
  drawnCard: line.drawnCard,
  drives: line.drives,
  holes: [...line.byHole].map(([key, side]) => ({
    ...settledHole(key),
    ...sideHole(side),
    notes: line.notes.get(key) ?? [],
  })),
  unsettled: line.unsettled.map(settledHole),
})
