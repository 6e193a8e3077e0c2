import * as z from 'zod/mini'
import { cardHandicapDuty, golfEditions, ruleOnCardHandicap } from '#core/card/rulings/card-handicap.ts'
import { ruleOnHoleScore } from '#core/card/rulings/hole-score.ts'
import { ruleOnMissingCertification } from '#core/card/rulings/missing-certification.ts'
import { concededThings, ruleOnConcession } from '#core/formats/rulings/concession.ts'
import { ruleOnMatchHandicap } from '#core/formats/rulings/match-handicap.ts'
import { ruleOnStartTime, type StartTimeRuling } from '#core/formats/rulings/start-time.ts'
import type { Answer } from '#scripts/check-values/answer.ts'
import { type Calculations, calculation } from './calculation.ts'
import { lowScoreReasonCodes, rulingCodes, startFormCodes } from './published-codes.ts'
import { codeOf, score, whole } from './published-inputs.ts'

/** Strokes beside a ruling: 0 without a penalty, `null` where it is not counted in strokes. */
function startStrokes(ruling: StartTimeRuling): number | null {
  if (ruling.code === 'no-penalty') return 0
  return ruling.code === 'general-penalty' && ruling.penalty.unit === 'strokes' ? ruling.penalty.strokes : null
}

/** Change in the total of the round, printed for Stableford alone. */
function startPoints(ruling: StartTimeRuling): number | null {
  if (ruling.code === 'no-penalty') return 0
  return ruling.code === 'general-penalty' && ruling.penalty.unit === 'points' ? ruling.penalty.points : null
}

const wrongCardHandicap = z.object({
  edition: z.enum(golfEditions),
  on_card: z.nullable(whole),
  correct: whole,
  affects_strokes: z.boolean(),
  local_rule_L2: z.optional(z.boolean()),
})

/** Cards and conduct: sections f and i of the published figures. */
export const rulingOps: Calculations = [
  [
    'concede',
    calculation(
      z.object({
        what: z.enum(concededThings),
        by: z.enum(['player', 'caddie']),
        hole_already_decided: z.boolean(),
      }),
      ({ what, by, hole_already_decided }) => {
        const ruling = ruleOnConcession({ what, by, isHoleDecided: hole_already_decided })
        return { valid: ruling.isValid, final: ruling.isValid ? ruling.isFinal : null }
      },
    ),
  ],
  [
    'match_wrong_handicap',
    calculation(
      z.object({ declared: whole, correct: whole, affects_strokes: z.boolean(), corrected_in_time: z.boolean() }),
      input => {
        const ruling = ruleOnMatchHandicap({
          declared: input.declared,
          correct: input.correct,
          affectsStrokes: input.affects_strokes,
          isCorrectedInTime: input.corrected_in_time,
        })
        const playsOff = ruling.code === 'no-penalty' ? ruling.playsOff : null
        return { ruling: rulingCodes[ruling.code], plays_off: playsOff }
      },
    ),
  ],
  [
    'stroke_play_wrong_handicap',
    calculation(wrongCardHandicap, input => {
      const ruling = ruleOnCardHandicap(cardHandicapDuty(input.edition, input.local_rule_L2 ?? false), {
        onCard: input.on_card,
        correct: input.correct,
        affectsStrokes: input.affects_strokes,
      })
      return { ruling: rulingCodes[ruling.code], net_off: ruling.code === 'no-penalty' ? ruling.netOff : null }
    }),
  ],
  [
    'wrong_hole_score',
    calculation(
      z.object({
        form: z.literal('stroke'),
        returned: score,
        actual: whole,
        reason: codeOf(lowScoreReasonCodes),
        before_close: z.boolean(),
      }),
      ({ returned, actual, reason, before_close }) => {
        const ruling = ruleOnHoleScore({
          returned,
          actual,
          reason: lowScoreReasonCodes[reason],
          isBeforeClose: before_close,
        })
        return { ruling: rulingCodes[ruling.code], score: ruling.code === 'disqualified' ? null : ruling.score }
      },
    ),
  ],
  [
    'missing_certification',
    calculation(z.object({ local_rule_L1: z.boolean() }), ({ local_rule_L1 }) => {
      const ruling = ruleOnMissingCertification(local_rule_L1)
      return { ruling: rulingCodes[ruling.code], strokes: ruling.code === 'disqualified' ? null : ruling.strokes }
    }),
  ],
  [
    'start_time',
    calculation(z.object({ minutes_late: z.number(), form: codeOf(startFormCodes) }), ({ minutes_late, form }) => {
      const ruling = ruleOnStartTime(minutes_late, startFormCodes[form])
      const answer: Record<string, Answer> = { ruling: rulingCodes[ruling.code], strokes: startStrokes(ruling) }
      return form === 'stableford' ? { ...answer, points: startPoints(ruling) } : answer
    }),
  ],
]
