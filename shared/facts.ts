import * as z from 'zod/mini'
import { unholedScores } from '#core/card/score.ts'
import { formatNames } from '#core/formats/format-names.ts'
import { holeOutMethods } from '#core/formats/happenings.ts'
import { playingConditionsValues } from '#core/handicap/playing-conditions.ts'
import { type FactKind, type FactValues, roles } from '#core/outing/facts.ts'
import type { BallId, GameId, PlayerId, TeeId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { rememberByName } from '#core/values/memo.ts'
import { groupId, hashText, idOf, inviteId, personName, textUpTo, wholeFrom } from './atoms.ts'
import { gameMethods } from './game-methods.ts'
import { limits } from './limits.ts'
import { proves } from './proof.ts'
import { greenSchema, shapeSchema } from './sketch.ts'

const hole = wholeFrom(1, 18)
const lap = wholeFrom(1, 9)
const par = wholeFrom(3, 7)
const index = wholeFrom(1, 18)
const hcp = wholeFrom(-limits.handicapStrokes, limits.handicapStrokes)
const byHole = <S extends z.ZodMiniType>(value: S) => z.array(value).check(z.minLength(9), z.maxLength(18))

const strokesOnHole = wholeFrom(1, limits.strokesOnHole)
export const scoreSchema = z.union([strokesOnHole, z.enum(unholedScores)])
export const closedScores = z.array(z.tuple([hole, lap, scoreSchema])).check(z.maxLength(60))

const ratings = z.nullable(
  z.strictObject({ courseRatingTenths: wholeFrom(200, 900), slope: wholeFrom(55, 155), par: wholeFrom(27, 90) }),
)

const tee = z.strictObject({
  name: personName,
  ratings,
  frontRatings: ratings,
  backRatings: ratings,
  pars: z.nullable(byHole(par)),
  indexes: z.nullable(byHole(index)),
  lengths: z.nullable(z.strictObject({ unit: z.enum(['yards', 'metres']), byHole: byHole(wholeFrom(1, 900)) })),
})

const handicap = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('index'), tenths: wholeFrom(-100, 540) }),
  z.strictObject({ kind: z.literal('course-handicap'), strokes: hcp }),
  z.strictObject({ kind: z.literal('plain-strokes'), strokes: hcp }),
])

export const holeAndLap = z.tuple([hole, lap])
export const holesAndLaps = z.array(holeAndLap).check(z.maxLength(60))

const place = z.strictObject({
  group: groupId,
  position: wholeFrom(1, 99),
  elsewhere: z.array(z.strictObject({ group: groupId, holes: holesAndLaps })).check(z.maxLength(20)),
})

const grant = { hash: hashText, role: z.enum(roles), group: z.nullable(groupId), label: textUpTo(limits.nameLength) }

const ballId = idOf<BallId>()
const agreedBetween = { between: z.tuple([ballId, ballId]), won: z.nullable(ballId) }
const agreed = <S extends z.ZodMiniType>(value: S) => z.array(value).check(z.minLength(1), z.maxLength(6))

/** Why a thing was ruled or noted; people read it. */
const reason = z.nullable(textUpTo(limits.reasonLength))

const ruled = {
  games: z.nullable(z.array(idOf<GameId>()).check(z.minLength(1), z.maxLength(40))),
  rule: z.nullable(textUpTo(limits.titleLength)),
  reason,
}
const ruling = z.discriminatedUnion('kind', [
  z.strictObject({ ...ruled, kind: z.literal('no-penalty'), ball: z.nullable(ballId) }),
  z.strictObject({
    ...ruled,
    kind: z.literal('penalty'),
    ball: ballId,
    hole: z.nullable(holeAndLap),
    strokes: wholeFrom(0, limits.strokesOnHole),
    holeLost: z.boolean(),
  }),
  z.strictObject({ ...ruled, kind: z.literal('disqualified'), ball: ballId, hole: z.nullable(holeAndLap) }),
  z.strictObject({ ...ruled, kind: z.literal('plays-off'), ball: ballId, strokes: hcp }),
  z.strictObject({ ...ruled, kind: z.literal('net-off'), ball: ballId, strokes: hcp }),
])

/** Any JSON value, for what is kept without being understood. Depth is bounded where an op is read. */
export const jsonSchema = z.json() as unknown as z.ZodMiniType<Json, Json>

/** The shape of every kind's value, strict; equal to core's types or it does not compile. */
export const factSchemas = {
  title: proves<FactValues['title']>()(textUpTo(limits.titleLength)),
  day: proves<FactValues['day']>()(z.iso.date()),
  length: proves<FactValues['length']>()(z.literal([9, 18])),
  rules: proves<FactValues['rules']>()(z.boolean()),
  course: proves<FactValues['course']>()(z.strictObject({ name: textUpTo(limits.titleLength) })),
  hole: proves<FactValues['hole']>()(z.strictObject({ par, index })),
  tee: proves<FactValues['tee']>()(tee),
  green: proves<FactValues['green']>()(greenSchema),
  shape: proves<FactValues['shape']>()(shapeSchema),
  player: proves<FactValues['player']>()(z.strictObject({ name: personName })),
  handicap: proves<FactValues['handicap']>()(handicap),
  playerTee: proves<FactValues['playerTee']>()(idOf<TeeId>()),
  ball: proves<FactValues['ball']>()(
    z.strictObject({ players: z.array(idOf<PlayerId>()).check(z.minLength(1), z.maxLength(4)) }),
  ),
  place: proves<FactValues['place']>()(place),
  group: proves<FactValues['group']>()(z.strictObject({ name: personName })),
  order: proves<FactValues['order']>()(holesAndLaps),
  score: proves<FactValues['score']>()(scoreSchema),
  main: proves<FactValues['main']>()(idOf<GameId>()),
  gameFormat: proves<FactValues['gameFormat']>()(z.enum(formatNames)),
  gameSides: proves<FactValues['gameSides']>()(
    z
      .array(z.array(idOf<BallId>()).check(z.minLength(1), z.maxLength(limits.playersInOuting)))
      .check(z.minLength(1), z.maxLength(limits.playersInOuting)),
  ),
  gameHoles: proves<FactValues['gameHoles']>()(
    z.strictObject({ from: z.nullable(holeAndLap), to: z.nullable(holeAndLap) }),
  ),
  gameAllowance: proves<FactValues['gameAllowance']>()(gameMethods.allowancePercent),
  gameRounding: proves<FactValues['gameRounding']>()(gameMethods.rounding),
  gameCourseHandicap: proves<FactValues['gameCourseHandicap']>()(gameMethods.courseHandicap),
  gameNineHoleIndex: proves<FactValues['gameNineHoleIndex']>()(gameMethods.nineHoleIndex),
  gameMatchStrokes: proves<FactValues['gameMatchStrokes']>()(gameMethods.matchStrokes),
  gameSideStrokes: proves<FactValues['gameSideStrokes']>()(gameMethods.sideStrokes),
  gameHandicapShares: proves<FactValues['gameHandicapShares']>()(gameMethods.handicapShares),
  gameMixedTees: proves<FactValues['gameMixedTees']>()(gameMethods.mixedTees),
  gameCountingBalls: proves<FactValues['gameCountingBalls']>()(gameMethods.countingBalls),
  gameShortTeam: proves<FactValues['gameShortTeam']>()(gameMethods.shortTeam),
  gameDrawnCard: proves<FactValues['gameDrawnCard']>()(gameMethods.drawnCard),
  gameMaximumScore: proves<FactValues['gameMaximumScore']>()(gameMethods.maximumScore),
  gameSkins: proves<FactValues['gameSkins']>()(gameMethods.skins),
  gameSkinsLeft: proves<FactValues['gameSkinsLeft']>()(gameMethods.skinsLeft),
  gamePresses: proves<FactValues['gamePresses']>()(gameMethods.presses),
  gameTies: proves<FactValues['gameTies']>()(gameMethods.ties),
  concededStroke: proves<FactValues['concededStroke']>()(strokesOnHole),
  concededHole: proves<FactValues['concededHole']>()(z.strictObject({ to: z.nullable(ballId) })),
  concededMatch: proves<FactValues['concededMatch']>()(z.strictObject({ to: z.nullable(ballId) })),
  agreedHole: proves<FactValues['agreedHole']>()(z.strictObject({ results: agreed(z.strictObject(agreedBetween)) })),
  agreedResult: proves<FactValues['agreedResult']>()(
    z.strictObject({
      results: agreed(z.strictObject({ ...agreedBetween, by: wholeFrom(0, 18), left: wholeFrom(0, 17) })),
    }),
  ),
  press: proves<FactValues['press']>()(z.strictObject({ by: ballId })),
  holeOut: proves<FactValues['holeOut']>()(z.strictObject({ counts: z.enum(holeOutMethods), reason })),
  drive: proves<FactValues['drive']>()(idOf<PlayerId>()),
  teeShot: proves<FactValues['teeShot']>()(idOf<PlayerId>()),
  likelyScore: proves<FactValues['likelyScore']>()(strokesOnHole),
  absence: proves<FactValues['absence']>()(
    z.strictObject({
      joinedAt: z.nullable(holeAndLap),
      leftAt: z.nullable(holeAndLap),
      isWithdrawn: z.boolean(),
      reason,
    }),
  ),
  marker: proves<FactValues['marker']>()(idOf<PlayerId>()),
  certifiedByPlayer: proves<FactValues['certifiedByPlayer']>()(z.strictObject({ scores: closedScores })),
  certifiedByMarker: proves<FactValues['certifiedByMarker']>()(z.strictObject({ scores: closedScores })),
  ruling: proves<FactValues['ruling']>()(ruling),
  playingConditions: proves<FactValues['playingConditions']>()(
    z.strictObject({ strokes: z.literal(playingConditionsValues), reason }),
  ),
  closeBall: proves<FactValues['closeBall']>()(z.strictObject({ scores: closedScores })),
  closeGroup: proves<FactValues['closeGroup']>()(
    z.strictObject({ facts: z.array(z.tuple([z.string().check(z.maxLength(limits.keyLength)), jsonSchema])) }),
  ),
  invite: proves<FactValues['invite']>()(z.strictObject(grant)),
  key: proves<FactValues['key']>()(z.strictObject({ ...grant, invite: z.nullable(inviteId) })),
  voidKey: proves<FactValues['voidKey']>()(z.literal(true)),
  voidInvite: proves<FactValues['voidInvite']>()(z.literal(true)),
} satisfies Record<FactKind, z.ZodMiniType>

/** True when this version understands the value; a newer version's is kept, passed on and left out of the sums. */
export function isKnownValue(kind: FactKind, value: Json): boolean {
  if (value !== null && typeof value === 'object') return isKnownObject(value, kind)
  if (kind !== 'score' || value === null) return factSchemas[kind].safeParse(value).success
  const found = knownScores.get(value)
  if (found !== undefined) return found
  const isKnown = scoreSchema.safeParse(value).success
  // Bounded, for anybody may send what is none.
  if (knownScores.size < 100) knownScores.set(value, isKnown)
  return isKnown
}

/** By the very value, which never changes: a log is read again after every act that is more than a score. */
const isKnownObject = rememberByName(
  (value: Extract<Json, object>, kind: FactKind) => factSchemas[kind].safeParse(value).success,
)

/** A day has thousands of scores and few different ones. */
const knownScores = new Map<string | number | boolean, boolean>()
