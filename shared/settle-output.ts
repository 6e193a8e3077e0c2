import * as z from 'zod/mini'
import { records } from '#core/card/card.ts'
import { unholedScores } from '#core/card/score.ts'
import type { SettleOutput } from '#core/outing/settle-output.ts'
import { factSchemas, jsonSchema } from './facts.ts'
import { everyPlainNote } from './plain-notes.ts'
import { proves } from './proof.ts'
import {
  allowanceAdviceSchema,
  certificationSchema,
  coverageSchema,
  handicappingSchema,
  indexAdviceSchema,
} from './settle-extras.ts'
import { courseHandicap, gameSchema, gap } from './settle-games.ts'

const text = z.string()
const whole = z.int()
const score = z.union([z.int(), z.enum(unholedScores)])
const hole = z.strictObject({ hole: whole, lap: whole })
const texts = z.array(text)
const entry = { score, record: z.enum(records), key: text, op: text, device: text, at: z.number() }

const card = z.strictObject({
  ball: text,
  name: text,
  players: texts,
  group: z.nullable(text),
  isClosed: z.boolean(),
  holes: z.array(
    z.extend(hole, {
      isScheduled: z.boolean(),
      kind: z.enum(['none', 'one', 'two']),
      score: z.nullable(score),
      scores: z.array(score),
      par: z.nullable(whole),
      level: z.nullable(whole),
    }),
  ),
  threes: z.array(
    z.strictObject({
      number: whole,
      holes: z.array(hole),
      par: whole,
      level: whole,
      overLevel: z.nullable(whole),
      isClosed: z.boolean(),
    }),
  ),
  overLevel: z.nullable(whole),
})

/** What `settle` prints. Later versions only add to it. */
export const settleOutputSchema = proves<SettleOutput>()(
  z.strictObject({
    sixThrees: z.literal('settled'),
    version: z.literal(1),
    outing: z.strictObject({
      title: z.nullable(text),
      day: z.nullable(text),
      length: z.literal([9, 18]),
      rules: z.boolean(),
      main: z.nullable(text),
    }),
    course: z.strictObject({
      name: z.nullable(text),
      holes: z.array(z.strictObject({ hole: whole, par: whole, index: whole })),
      strokeIndexAdvice: indexAdviceSchema,
      tees: z.array(z.strictObject({ id: text, name: text, strokeIndexAdvice: indexAdviceSchema })),
    }),
    players: z.array(
      z.strictObject({
        id: text,
        name: text,
        tee: z.nullable(text),
        handicap: z.nullable(factSchemas.handicap),
        courseHandicap,
      }),
    ),
    groups: z.array(z.strictObject({ id: text, name: text, balls: texts, order: z.array(hole), extra: z.array(hole) })),
    games: z.array(gameSchema),
    cards: z.array(card),
    twoScores: z.array(z.extend(hole, { ball: text, entries: z.array(z.strictObject(entry)) })),
    late: z.array(z.extend(hole, { ...entry, ball: text, closed: z.nullable(score) })),
    stray: z.array(z.extend(hole, { ...entry, ball: text, group: text })),
    lateFacts: z.array(z.strictObject({ key: text, value: jsonSchema, op: text, closed: jsonSchema })),
    doubts: z.array(z.strictObject({ key: text, values: z.array(z.strictObject({ value: jsonSchema, op: text })) })),
    newer: texts,
    gaps: z.array(z.strictObject({ ...gap, game: text })),
    notes: everyPlainNote,
    teeShots: z.array(z.strictObject({ ball: text, holes: z.array(z.extend(hole, { player: text })) })),
    certification: z.array(certificationSchema),
    handicapping: z.array(handicappingSchema),
    allowanceAdvice: z.array(allowanceAdviceSchema),
    coverage: coverageSchema,
  }),
)
