import type { CardHandicapRuling } from '#core/card/rulings/card-handicap.ts'
import type { HoleScoreRuling } from '#core/card/rulings/hole-score.ts'
import type { CertificationRuling } from '#core/card/rulings/missing-certification.ts'
import type { MatchHandicapRuling } from '#core/formats/rulings/match-handicap.ts'
import type { ReturnedHoleRuling } from '#core/formats/rulings/returned-score.ts'
import type { StartPenalty, StartTimeRuling } from '#core/formats/rulings/start-time.ts'
import { unreachable } from '#core/values/assert.ts'

/** What the Rules make of it, in what a ruling can say; whom it is about and on which hole is the committee's to add. */
export type RulingOutcome = { readonly rule: string } & (
  | { readonly kind: 'no-penalty' }
  | { readonly kind: 'disqualified' }
  | { readonly kind: 'plays-off' | 'net-off'; readonly strokes: number }
  | {
      readonly kind: 'penalty'
      /** Of the hole that it is about, or of the round: points and results by hole lose it there, whatever the unit. */
      readonly on: 'hole' | 'round'
      readonly strokes: number
      readonly holeLost: boolean
    }
)

/** A hole score returned wrong; penalty strokes that the committee adds go on its hole. */
export function outcomeOfReturnedHole(
  returned: number | null,
  ruling: HoleScoreRuling | ReturnedHoleRuling,
): RulingOutcome {
  const rule = 'Rules of Golf 3.3b(3)'
  switch (ruling.code) {
    case 'stands':
    case 'no-return':
      return { rule, kind: 'no-penalty' }
    case 'committee-adds-penalty':
      return { rule, ...onHole(ruling.score - (returned ?? ruling.score)) }
    case 'disqualified':
      return { rule, kind: 'disqualified' }
    default:
      return unreachable(ruling)
  }
}

/** A handicap declared wrong in a match. `correct` is what the ball should have played off. */
export function outcomeOfMatchHandicap(correct: number, ruling: MatchHandicapRuling): RulingOutcome {
  const rule = 'Rules of Golf 3.2c(1)'
  if (ruling.code === 'disqualified') return { rule, kind: 'disqualified' }
  if (ruling.playsOff === correct) return { rule, kind: 'no-penalty' }
  return { rule, kind: 'plays-off', strokes: ruling.playsOff }
}

/** A handicap missing or wrong on a card. `correct` is what it should have been. */
export function outcomeOfCardHandicap(correct: number, ruling: CardHandicapRuling): RulingOutcome {
  const rule = 'Rules of Golf 3.3b(4)'
  if (ruling.code === 'disqualified') return { rule, kind: 'disqualified' }
  if (ruling.netOff === correct) return { rule, kind: 'no-penalty' }
  return { rule, kind: 'net-off', strokes: ruling.netOff }
}

/** A start at the wrong time; a penalty on a hole is on the first that the ball plays. */
export function outcomeOfStartTime(ruling: StartTimeRuling): RulingOutcome {
  const rule = 'Rules of Golf 5.3a'
  switch (ruling.code) {
    case 'no-penalty':
    case 'disqualified':
      return { rule, kind: ruling.code }
    case 'general-penalty':
      return { rule, ...startPenalty(ruling.penalty) }
    default:
      return unreachable(ruling)
  }
}

/** A card that somebody did not certify; a penalty on a hole is on the last that the ball plays. */
export function outcomeOfCertification(ruling: CertificationRuling): RulingOutcome {
  if (ruling.code === 'disqualified') return { rule: 'Rules of Golf 3.3b(2)', kind: 'disqualified' }
  return { rule: 'Model Local Rule L-1', ...onHole(ruling.strokes) }
}

type Penalty = Omit<Extract<RulingOutcome, { readonly kind: 'penalty' }>, 'rule'>

const onHole = (strokes: number): Penalty => ({ kind: 'penalty', on: 'hole', strokes, holeLost: false })

const onRound = (strokes: number): Penalty => ({ kind: 'penalty', on: 'round', strokes, holeLost: false })

function startPenalty(found: StartPenalty): Penalty {
  switch (found.unit) {
    case 'strokes':
      return onHole(found.strokes)
    case 'points':
      return onRound(-found.points)
    case 'holes':
      return onRound(-found.holes)
    case 'hole-lost':
      return { kind: 'penalty', on: 'hole', strokes: 0, holeLost: true }
    default:
      return unreachable(found)
  }
}
