import type { MatchLine } from '#core/formats/game-result.ts'
import { formatMatchLine, formatMatchState } from '#core/formats/match-text.ts'
import type { Outing } from './outing.ts'
import type { SettledMatch, SettledMatchHole } from './settle-output-games.ts'
import { namesOf, settledHole, sideHole } from './settled-side.ts'

export function settledMatch(outing: Outing, line: MatchLine): SettledMatch {
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
