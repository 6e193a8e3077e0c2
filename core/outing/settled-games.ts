import type { HoleKey } from '#core/card/score.ts'
import type { BallStrokes, GameResult, MatchLine, SideHole, Tie, TotalLine } from '#core/formats/game-result.ts'
import { formatMatchLine, formatMatchState } from '#core/formats/match-text.ts'
import { must, unreachable } from '#core/values/assert.ts'
import { formatDecimal } from '#core/values/decimal.ts'
import { type Fraction, roundHalfUp } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import type { Game, Outing } from './outing.ts'
import type { Results } from './results.ts'
import type {
  SettledCourseHandicap,
  SettledGame,
  SettledGameHead,
  SettledHole,
  SettledLine,
  SettledMatch,
  SettledMatchHole,
  SettledSideHole,
  SettledStrokes,
  SettledTie,
} from './settle-output-games.ts'

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
    default:
      return unreachable(result)
  }
}

const headOf = (game: Game): SettledGameHead => ({
  id: game.id,
  group: game.group,
  format: game.format,
  sides: game.sides,
  settings: {
    allowance: game.methods.allowancePercent,
    rounding: game.methods.rounding,
    nineHoleIndex: game.methods.nineHoleIndex,
    matchStrokes: game.methods.matchStrokes,
    sideStrokes: game.methods.sideStrokes,
    handicapShares: game.methods.handicapShares,
    mixedTees: game.methods.mixedTees,
    countingBalls: game.methods.countingBalls,
    maximumScore: game.methods.maximumScore,
    skins: game.methods.skins,
    presses: game.methods.presses,
    ties: game.methods.ties,
  },
})

/** `7/1` taken apart. */
export function settledHole(key: HoleKey): SettledHole {
  const [hole = 0, lap = 0] = key.split('/').map(Number)
  return { hole, lap }
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

const sideHole = (side: SideHole): SettledSideHole => ({
  kind: side.kind,
  value: side.kind === 'value' ? side.value : null,
  values: side.kind === 'two' ? side.values : [],
  balls: side.kind === 'value' ? side.balls : [],
})

const namesOf = (outing: Outing, side: readonly BallId[]): string[] =>
  side.map(ball => outing.balls.get(ball)?.name ?? ball)

const settledTie = (tie: Tie): SettledTie => ({
  ...tie,
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
  drives: line.drives,
  holes: [...line.byHole].map(([key, side]) => ({
    ...settledHole(key),
    ...sideHole(side),
    notes: line.notes.get(key) ?? [],
  })),
  unsettled: line.unsettled.map(settledHole),
})

function settledMatch(outing: Outing, line: MatchLine): SettledMatch {
  const { sides, state } = line
  return {
    sides,
    names: sides.map(side => namesOf(outing, side)),
    text: formatMatchState(state),
    line: formatMatchLine(state),
    leader: state.leader,
    winner: state.winner,
    lead: state.lead,
    holesPlayed: state.holesPlayed,
    toPlay: state.toPlay,
    gaps: state.gaps,
    isDormie: state.dormie,
    isFinished: state.result !== null,
    decidedBy: line.decidedBy,
    strokes: [...line.strokes].map(([ball, { strokes }]) => ({ ball, strokes })),
    holes: line.holes.map(matchHole),
    unsettled: line.unsettled.map(settledHole),
    voids: line.voids.map(({ hole, by, reason }) => ({ ...settledHole(hole), by, reason })),
  }
}

const matchHole = ({ key, result, reason, balls, values }: MatchLine['holes'][number]): SettledMatchHole => ({
  ...settledHole(key),
  result: typeof result === 'number' ? result : null,
  outcomes: typeof result === 'object' && result !== null ? result.two : [],
  reason,
  by: balls,
  values: values.map(sideHole),
})
