import type { HoleAndLap, Ruling } from '#core/outing/facts.ts'
import type { RulingOutcome } from '#core/outing/ruling-outcome.ts'
import { unreachable } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'

/** What the committee writes of an outcome once it has said whom it is about, and on which hole. */
export function rulingOn(ball: BallId, hole: HoleAndLap, reason: string | null, outcome: RulingOutcome): Ruling {
  const common = { games: null, rule: outcome.rule, reason, ball }
  switch (outcome.kind) {
    case 'no-penalty':
      return { ...common, kind: outcome.kind }
    case 'disqualified':
      return { ...common, kind: outcome.kind, hole: null }
    case 'plays-off':
    case 'net-off':
      return { ...common, kind: outcome.kind, strokes: outcome.strokes }
    case 'penalty': {
      const { kind, on, strokes, holeLost } = outcome
      return { ...common, kind, hole: on === 'hole' ? hole : null, strokes, holeLost }
    }
    default:
      return unreachable(outcome)
  }
}
