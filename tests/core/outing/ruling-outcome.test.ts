import { describe, expect, it } from 'vitest'
import { ruleOnHoleScore } from '#core/card/rulings/hole-score.ts'
import { ruleOnMissingCertification } from '#core/card/rulings/missing-certification.ts'
import { ruleOnMatchHandicap } from '#core/formats/rulings/match-handicap.ts'
import { ruleOnStartTime, startForms } from '#core/formats/rulings/start-time.ts'
import type { NewFact } from '#core/outing/acts.ts'
import {
  certificationFacts,
  matchHandicapFacts,
  type RuledBall,
  returnedHoleFacts,
  startTimeFacts,
} from '#core/outing/acts-ruling.ts'
import type { RulingId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import { actAfter, alder, outingWith } from '#tests/kit/two-groups.ts'

const on: RuledBall = { id: 'first' as RulingId, ball: alder, games: null, reason: 'Said so.' }
const at = { hole: 3, lap: 1 }

/** The ruling that the facts make, which every reader must know. */
function ruled(facts: readonly NewFact[]) {
  expect(facts.every(({ value }) => isKnownValue('ruling', value))).toBe(true)
  return outingWith([actAfter([], 'desk', facts)]).notes.rulings.map(({ ruling }) => ruling)
}

describe('what a ruling writes', () => {
  it('of a hole score: the penalty on its hole, a disqualification, or nothing but its trace', () => {
    const hole = { returned: 5, actual: 7, isBeforeClose: true } as const
    const added = ruleOnHoleScore({ ...hole, reason: 'unknown-penalty-stroke' })
    expect(ruled(returnedHoleFacts(on, at, 5, added))).toEqual([
      {
        games: null,
        rule: 'Rules of Golf 3.3b(3)',
        reason: 'Said so.',
        ball: alder,
        kind: 'penalty',
        hole: [3, 1],
        strokes: 2,
        holeLost: false,
      },
    ])
    expect(ruled(returnedHoleFacts(on, at, 5, ruleOnHoleScore({ ...hole, reason: 'other' })))).toMatchObject([
      { kind: 'disqualified', hole: null },
    ])
    expect(ruled(returnedHoleFacts(on, at, 5, { code: 'stands', score: 5 }))).toMatchObject([{ kind: 'no-penalty' }])
  })

  it('of a handicap declared in a match: the lower one is played off', () => {
    const declared = (strokes: number) =>
      matchHandicapFacts(
        on,
        16,
        ruleOnMatchHandicap({ declared: strokes, correct: 16, affectsStrokes: true, isCorrectedInTime: false }),
      )
    expect(ruled(declared(14))).toMatchObject([{ kind: 'plays-off', strokes: 14, rule: 'Rules of Golf 3.2c(1)' }])
    expect(ruled(declared(16))).toMatchObject([{ kind: 'no-penalty' }])
    expect(ruled(declared(18))).toMatchObject([{ kind: 'disqualified' }])
  })

  it('of a late start: in the unit of each form', () => {
    const late = startForms.map(form => [form, ruled(startTimeFacts(on, at, ruleOnStartTime(4, form)))[0]])
    expect(Object.fromEntries(late)).toMatchObject({
      'stroke-play': { kind: 'penalty', hole: [3, 1], strokes: 2, holeLost: false },
      'maximum-score': { kind: 'penalty', hole: [3, 1], strokes: 2, holeLost: false },
      stableford: { kind: 'penalty', hole: null, strokes: 2 },
      'par-bogey': { kind: 'penalty', hole: null, strokes: 1 },
      match: { kind: 'penalty', hole: [3, 1], strokes: 0, holeLost: true },
    })
    expect(ruled(startTimeFacts(on, at, ruleOnStartTime(6, 'match')))).toMatchObject([{ kind: 'disqualified' }])
    expect(ruled(startTimeFacts(on, at, ruleOnStartTime(0, 'match')))).toMatchObject([{ kind: 'no-penalty' }])
  })

  it('of a card not certified: two strokes on the last hole under L-1', () => {
    expect(ruled(certificationFacts(on, at, ruleOnMissingCertification(true)))).toMatchObject([
      { kind: 'penalty', hole: [3, 1], strokes: 2, rule: 'Model Local Rule L-1' },
    ])
    expect(ruled(certificationFacts(on, at, ruleOnMissingCertification(false)))).toMatchObject([
      { kind: 'disqualified', rule: 'Rules of Golf 3.3b(2)' },
    ])
  })
})
