import * as z from 'zod/mini'
import { certificationDifferences } from '#core/card/certification.ts'
import { unholedScores } from '#core/card/score.ts'
import { notPlayedMethods } from '#core/handicap/adjusted-gross.ts'
import { fieldSizeMethods } from '#core/handicap/allowance.ts'
import { figuresGiven, territoriesNotCovered } from '#core/handicap/coverage.ts'
import { playingConditionsValues } from '#core/handicap/playing-conditions.ts'
import { handicappingGaps } from '#core/outing/handicapping.ts'
import type {
  SettledAllowanceAdvice,
  SettledCertification,
  SettledCoverage,
  SettledHandicapping,
} from '#core/outing/settle-output-extras.ts'
import { proves } from './proof.ts'

const text = z.string()
const whole = z.int()
const score = z.union([z.int(), z.enum(unholedScores)])
const scoreOrNone = z.nullable(score)
const hole = z.strictObject({ hole: whole, lap: whole })
const certifier = z.strictObject({ hasCertified: z.boolean(), stands: z.boolean() })

export const certificationSchema = proves<SettledCertification>()(
  z.strictObject({
    ball: text,
    markedBy: z.nullable(text),
    isComplete: z.boolean(),
    isCertified: z.boolean(),
    player: certifier,
    marker: certifier,
    holes: z.array(
      z.extend(hole, {
        card: z.array(score),
        marker: z.array(score),
        desk: z.array(score),
        settled: scoreOrNone,
        byPlayer: scoreOrNone,
        byMarker: scoreOrNone,
        differences: z.array(z.enum(certificationDifferences)),
      }),
    ),
  }),
)

const acceptedAs = z.enum(['eighteen-hole-score', 'nine-hole-score', 'not-acceptable'])
const conditions = z.literal(playingConditionsValues)

export const handicappingSchema = proves<SettledHandicapping>()(
  z.strictObject({
    ball: text,
    player: z.nullable(text),
    unofficial: z.literal(true),
    courseHandicap: z.nullable(whole),
    holesPlayed: whole,
    acceptedAs: z.strictObject({ '2020': acceptedAs, '2024': acceptedAs }),
    playingConditions: z.strictObject({ given: z.nullable(conditions), used: conditions }),
    holes: z.array(
      z.extend(hole, {
        par: whole,
        strokes: z.nullable(whole),
        most: z.nullable(whole),
        score: z.nullable(z.union([whole, z.enum(['started', 'not-played'])])),
      }),
    ),
    scores: z.array(
      z.strictObject({
        notPlayed: z.enum(notPlayedMethods),
        adjustedGross: whole,
        holesLeftOut: whole,
        differential: z.nullable(
          z.strictObject({ holes: z.literal([9, 18]), unrounded: text, rounded: z.nullable(text) }),
        ),
      }),
    ),
    gaps: z.array(z.strictObject({ code: z.enum(handicappingGaps), at: z.nullable(hole) })),
  }),
)

export const allowanceAdviceSchema = proves<SettledAllowanceAdvice>()(
  z.strictObject({
    game: text,
    fieldSize: whole,
    percents: z.array(z.strictObject({ method: z.enum(fieldSizeMethods), percent: whole })),
  }),
)

export const coverageSchema = proves<SettledCoverage>()(
  z.strictObject({
    territoriesNotCovered: z.array(z.enum(territoriesNotCovered)),
    figuresGiven: z.array(z.enum(figuresGiven)),
  }),
)

/** What the recommendations say of a stroke index table; null where there are no eighteen holes. */
export const indexAdviceSchema = z.nullable(
  z.strictObject({
    isPermutation: z.boolean(),
    hasOddEvenSplit: z.boolean(),
    hasLowestInMiddle: z.boolean(),
    hasSecondLowestApart: z.boolean(),
    hasNoLowNeighbours: z.boolean(),
  }),
)
