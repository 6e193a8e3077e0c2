import * as z from 'zod/mini'
import { records } from '#core/card/card.ts'
import { formatNames } from '#core/formats/format-names.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import { mostShapes } from '#core/outing/sketch.ts'
import type { BallId, GameId, PlayerId, TeeId } from '#core/values/ids.ts'
import { groupId, idOf, personName, textUpTo, wholeFrom } from './atoms.ts'
import { holeAndLap, holesAndLaps, scoreSchema } from './facts.ts'
import { gameMethods } from './game-methods.ts'
import { limits } from './limits.ts'
import { plainNotes } from './plain-notes.ts'
import { proves } from './proof.ts'
import { greenSchema, shapeSchema } from './sketch.ts'

const ballId = idOf<BallId>()
const par = wholeFrom(3, 7)
const index = wholeFrom(1, 18)
const handicapStrokes = wholeFrom(-limits.handicapStrokes, limits.handicapStrokes)

const ratings = z.optional(
  z.strictObject({
    courseRating: z.number().check(z.gte(20), z.lte(90)),
    slope: wholeFrom(55, 155),
    par: wholeFrom(27, 90),
  }),
)

/** A course as a value: in an outing file and in a file of its own. */
export const plainCourseSchema = z.strictObject({
  name: z.optional(textUpTo(limits.titleLength)),
  holes: z.array(z.strictObject({ par, index })).check(z.maxLength(18)),
  tees: z.optional(
    z.array(
      z.strictObject({
        id: idOf<TeeId>(),
        name: personName,
        ratings,
        frontRatings: ratings,
        backRatings: ratings,
        pars: z.optional(z.array(par)),
        indexes: z.optional(z.array(index)),
        lengths: z.optional(z.strictObject({ unit: z.enum(['yards', 'metres']), byHole: z.array(wholeFrom(1, 900)) })),
      }),
    ),
  ),
  sketches: z.optional(
    z
      .array(
        z.strictObject({
          hole: wholeFrom(1, 18),
          green: z.optional(greenSchema),
          shapes: z.optional(z.array(shapeSchema).check(z.maxLength(mostShapes))),
        }),
      )
      .check(z.maxLength(18)),
  ),
})

/** An index from +10.0 to 54.0; a plus is written with its sign. */
const handicapIndex = z.union([
  z.number().check(z.gte(0), z.lte(54)),
  z.string().check(z.regex(/^(\+10(\.0)?|\+\d(\.\d)?|[0-4]?\d(\.\d)?|5[0-3](\.\d)?|54(\.0)?)$/)),
])

const player = z.strictObject({
  id: idOf<PlayerId>(),
  name: personName,
  tee: z.optional(idOf<TeeId>()),
  handicap: z.optional(
    z.union([
      z.strictObject({ index: handicapIndex }),
      z.strictObject({ courseHandicap: handicapStrokes }),
      z.strictObject({ strokes: handicapStrokes }),
    ]),
  ),
})

const group = z.strictObject({
  id: groupId,
  name: personName,
  balls: z.array(ballId).check(z.maxLength(99)),
  start: z.optional(wholeFrom(1, 18)),
  order: z.optional(z.array(z.tuple([wholeFrom(1, 18), wholeFrom(1, 9)])).check(z.maxLength(60))),
})

/** Null leaves it unset. */
const setting = <S extends z.ZodMiniType>(schema: S) => z.optional(z.nullable(schema))

const game = z.strictObject({
  id: idOf<GameId>(),
  format: z.enum(formatNames),
  group: z.optional(groupId),
  sides: z.array(z.array(ballId).check(z.minLength(1))).check(z.minLength(1)),
  from: z.optional(holeAndLap),
  to: z.optional(holeAndLap),
  allowance: setting(gameMethods.allowancePercent),
  rounding: setting(gameMethods.rounding),
  courseHandicap: setting(gameMethods.courseHandicap),
  nineHoleIndex: setting(gameMethods.nineHoleIndex),
  matchStrokes: setting(gameMethods.matchStrokes),
  sideStrokes: setting(gameMethods.sideStrokes),
  handicapShares: setting(gameMethods.handicapShares),
  mixedTees: setting(gameMethods.mixedTees),
  countingBalls: setting(gameMethods.countingBalls),
  shortTeam: setting(gameMethods.shortTeam),
  drawnCard: setting(gameMethods.drawnCard),
  maximumScore: setting(gameMethods.maximumScore),
  skins: setting(gameMethods.skins),
  skinsLeft: setting(gameMethods.skinsLeft),
  presses: setting(gameMethods.presses),
  ties: setting(gameMethods.ties),
})

const scores = z.strictObject({
  ball: ballId,
  group: z.optional(groupId),
  record: z.optional(z.enum(records)),
  lap: z.optional(wholeFrom(1, 9)),
  holes: z.array(z.nullable(scoreSchema)),
})

/** The plain outing file. References between its parts are checked apart: `faultsOfPlain` in core. */
export const plainOutingSchema = proves<PlainOuting>()(
  z.strictObject({
    sixThrees: z.literal('outing'),
    version: z.literal(1),
    form: z.literal('plain'),
    title: z.optional(textUpTo(limits.titleLength)),
    day: z.optional(z.iso.date()),
    length: z.literal([9, 18]),
    rules: z.optional(z.boolean()),
    course: plainCourseSchema,
    players: z.array(player).check(z.minLength(1), z.maxLength(limits.playersInOuting)),
    balls: z.optional(
      z.array(z.strictObject({ id: ballId, players: z.array(idOf<PlayerId>()).check(z.minLength(1), z.maxLength(4)) })),
    ),
    groups: z.array(group),
    moved: z.optional(z.array(z.strictObject({ ball: ballId, group: groupId, holes: holesAndLaps }))),
    games: z.optional(z.array(game)),
    main: z.optional(idOf<GameId>()),
    scores: z.optional(z.array(scores)),
    ...plainNotes,
    closed: z.optional(z.array(ballId)),
  }),
)
