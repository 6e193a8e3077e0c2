import { describe, expect, it } from 'vitest'
import { ruleOnCardHandicap } from '#core/card/rulings/card-handicap.ts'
import { ruleOnHoleScore } from '#core/card/rulings/hole-score.ts'
import { ruleOnMissingCertification } from '#core/card/rulings/missing-certification.ts'
import { ruleOnMatchHandicap } from '#core/formats/rulings/match-handicap.ts'
import { ruleOnStartTime, startForms } from '#core/formats/rulings/start-time.ts'
import { rulingFacts } from '#core/outing/acts-card.ts'
import {
  outcomeOfCardHandicap,
  outcomeOfCertification,
  outcomeOfMatchHandicap,
  outcomeOfReturnedHole,
  outcomeOfStartTime,
  type RulingOutcome,
} from '#core/outing/ruling-outcome.ts'
import type { RulingId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import { rulingOn } from '#tests/kit/ruling-on.ts'
import { actAfter, alder, outingWith } from '#tests/kit/two-groups.ts'

/** The ruling that is made of it for Alder's 3rd, which every reader must know. */
function ruled(outcome: RulingOutcome) {
  const facts = rulingFacts('first' as RulingId, rulingOn(alder, [3, 1], 'Said so.', outcome))
  expect(facts.every(({ value }) => isKnownValue('ruling', value))).toBe(true)
  return outingWith([actAfter([], 'desk', facts)]).notes.rulings.map(({ ruling }) => ruling)
}

describe('what a ruling writes', () => {
  it('of a hole score: the penalty on its hole, a disqualification, or nothing but its trace', () => {
    const hole = { returned: 5, actual: 7, isBeforeClose: true } as const
    const added = ruleOnHoleScore({ ...hole, reason: 'unknown-penalty-stroke' })
    expect(ruled(outcomeOfReturnedHole(5, added))).toEqual([
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
    expect(ruled(outcomeOfReturnedHole(5, ruleOnHoleScore({ ...hole, reason: 'other' })))).toMatchObject([
      { kind: 'disqualified', hole: null },
    ])
    expect(ruled(outcomeOfReturnedHole(5, { code: 'stands', score: 5 }))).toMatchObject([{ kind: 'no-penalty' }])
  })

  it('of a handicap declared in a match: the lower one is played off', () => {
    const declared = (strokes: number) =>
      outcomeOfMatchHandicap(
        16,
        ruleOnMatchHandicap({ declared: strokes, correct: 16, affectsStrokes: true, isCorrectedInTime: false }),
      )
    expect(ruled(declared(14))).toMatchObject([{ kind: 'plays-off', strokes: 14, rule: 'Rules of Golf 3.2c(1)' }])
    expect(ruled(declared(16))).toMatchObject([{ kind: 'no-penalty' }])
    expect(ruled(declared(18))).toMatchObject([{ kind: 'disqualified' }])
  })

  it('of a handicap on a card: what stands too low is what the net score is off', () => {
    const onCard = (strokes: number) =>
      outcomeOfCardHandicap(12, ruleOnCardHandicap('player', { onCard: strokes, correct: 12, affectsStrokes: true }))
    expect(ruled(onCard(10))).toMatchObject([{ kind: 'net-off', strokes: 10, rule: 'Rules of Golf 3.3b(4)' }])
    expect(ruled(onCard(12))).toMatchObject([{ kind: 'no-penalty' }])
    expect(ruled(onCard(14))).toMatchObject([{ kind: 'disqualified' }])
  })

  it('of a late start: in the unit of each form', () => {
    const late = startForms.map(form => [form, ruled(outcomeOfStartTime(ruleOnStartTime(4, form)))[0]])
    expect(Object.fromEntries(late)).toMatchObject({
      'stroke-play': { kind: 'penalty', hole: [3, 1], strokes: 2, holeLost: false },
      'maximum-score': { kind: 'penalty', hole: [3, 1], strokes: 2, holeLost: false },
      stableford: { kind: 'penalty', hole: null, strokes: 2 },
      'par-bogey': { kind: 'penalty', hole: null, strokes: 1 },
      match: { kind: 'penalty', hole: [3, 1], strokes: 0, holeLost: true },
    })
    expect(ruled(outcomeOfStartTime(ruleOnStartTime(6, 'match')))).toMatchObject([{ kind: 'disqualified' }])
    expect(ruled(outcomeOfStartTime(ruleOnStartTime(0, 'match')))).toMatchObject([{ kind: 'no-penalty' }])
  })

  it('of a card not certified: two strokes on the last hole under L-1', () => {
    expect(ruled(outcomeOfCertification(ruleOnMissingCertification(true)))).toMatchObject([
      { kind: 'penalty', hole: [3, 1], strokes: 2, rule: 'Model Local Rule L-1' },
    ])
    expect(ruled(outcomeOfCertification(ruleOnMissingCertification(false)))).toMatchObject([
      { kind: 'disqualified', rule: 'Rules of Golf 3.3b(2)' },
    ])
  })
})
