import type { HoleScoreRuling } from '#core/card/rulings/hole-score.ts'
import type { CertificationRuling } from '#core/card/rulings/missing-certification.ts'
import type { PlayedHole } from '#core/card/score.ts'
import type { MatchHandicapRuling } from '#core/formats/rulings/match-handicap.ts'
import type { ReturnedHoleRuling } from '#core/formats/rulings/returned-score.ts'
import type { StartPenalty, StartTimeRuling } from '#core/formats/rulings/start-time.ts'
import { unreachable } from '#core/values/assert.ts'
import type { BallId, GameId, RulingId } from '#core/values/ids.ts'
import { rulingFacts } from './acts-card.ts'
import type { HoleAndLap, Ruling } from './facts.ts'
import type { NewFact } from './stated-fact.ts'

/** Whom a ruling is about, and where it counts. */
export interface RuledBall {
  readonly id: RulingId
  readonly ball: BallId
  /** Null for every game of the outing. */
  readonly games: readonly GameId[] | null
  readonly reason: string | null
}

/** A hole score returned wrong; penalty strokes that the committee adds go on its hole. */
export function returnedHoleFacts(
  on: RuledBall,
  at: PlayedHole,
  returned: number | null,
  ruling: HoleScoreRuling | ReturnedHoleRuling,
): NewFact[] {
  const rule = 'Rules of Golf 3.3b(3)'
  switch (ruling.code) {
    case 'stands':
    case 'no-return':
      return write(on, rule, { kind: 'no-penalty' })
    case 'committee-adds-penalty':
      return write(on, rule, penalty(at, ruling.score - (returned ?? ruling.score)))
    case 'disqualified':
      return write(on, rule, { kind: 'disqualified', hole: null })
    default:
      return unreachable(ruling)
  }
}

/** A handicap declared wrong in a match. `correct` is what the ball should have played off. */
export function matchHandicapFacts(on: RuledBall, correct: number, ruling: MatchHandicapRuling): NewFact[] {
  const rule = 'Rules of Golf 3.2c(1)'
  if (ruling.code === 'disqualified') return write(on, rule, { kind: 'disqualified', hole: null })
  if (ruling.playsOff === correct) return write(on, rule, { kind: 'no-penalty' })
  return write(on, rule, { kind: 'plays-off', strokes: ruling.playsOff })
}

/** A start at the wrong time. `first` is the first hole that the ball plays. */
export function startTimeFacts(on: RuledBall, first: PlayedHole, ruling: StartTimeRuling): NewFact[] {
  const rule = 'Rules of Golf 5.3a'
  switch (ruling.code) {
    case 'no-penalty':
      return write(on, rule, { kind: 'no-penalty' })
    case 'general-penalty':
      return write(on, rule, startPenalty(ruling.penalty, first))
    case 'disqualified':
      return write(on, rule, { kind: 'disqualified', hole: null })
    default:
      return unreachable(ruling)
  }
}

/** A card that somebody did not certify. `last` is the last hole of the round. */
export function certificationFacts(on: RuledBall, last: PlayedHole, ruling: CertificationRuling): NewFact[] {
  const rule = 'Rules of Golf 3.3b(2)'
  if (ruling.code === 'disqualified') return write(on, rule, { kind: 'disqualified', hole: null })
  return write(on, 'Model Local Rule L-1', penalty(last, ruling.strokes))
}

/** Points and results by hole lose it on the round, whatever the unit. */
function startPenalty(found: StartPenalty, first: PlayedHole): Outcome {
  switch (found.unit) {
    case 'strokes':
      return penalty(first, found.strokes)
    case 'points':
      return penalty(null, -found.points)
    case 'holes':
      return penalty(null, -found.holes)
    case 'hole-lost':
      return { kind: 'penalty', hole: [first.hole, first.lap], strokes: 0, holeLost: true }
    default:
      return unreachable(found)
  }
}

/** What a ruling says, but for whom it is about. */
type Outcome =
  | { readonly kind: 'no-penalty' }
  | { readonly kind: 'penalty'; readonly hole: HoleAndLap | null; readonly strokes: number; readonly holeLost: boolean }
  | { readonly kind: 'disqualified'; readonly hole: null }
  | { readonly kind: 'plays-off'; readonly strokes: number }

const penalty = (at: PlayedHole | null, strokes: number): Outcome => ({
  kind: 'penalty',
  hole: at && [at.hole, at.lap],
  strokes,
  holeLost: false,
})

function write({ id, ball, games, reason }: RuledBall, rule: string, outcome: Outcome): NewFact[] {
  const ruling: Ruling = { games, rule, reason, ball, ...outcome }
  return rulingFacts(id, ruling)
}
