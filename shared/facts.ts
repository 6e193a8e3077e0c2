import * as z from 'zod/mini'
import { unholedScores } from '#core/card/score.ts'
import { formatNames } from '#core/formats/format-names.ts'
import { halfIndexMethods } from '#core/handicap/course-handicap.ts'
import { matchStrokesMethods } from '#core/handicap/match-strokes.ts'
import { allowanceRoundings } from '#core/handicap/playing-handicap.ts'
import { type FactKind, type FactValues, roles } from '#core/outing/facts.ts'
import type { BallId, GameId, PlayerId, TeeId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { groupId, hashText, idOf, inviteId, personName, textUpTo, wholeFrom } from './atoms.ts'
import { limits } from './limits.ts'
import { proves } from './proof.ts'

const hole = wholeFrom(1, 18)
const lap = wholeFrom(1, 9)
const par = wholeFrom(3, 7)
const index = wholeFrom(1, 18)
const hcp = wholeFrom(-limits.handicapStrokes, limits.handicapStrokes)
const byHole = <S extends z.ZodMiniType>(value: S) => z.array(value).check(z.minLength(9), z.maxLength(18))

export const scoreSchema = z.union([wholeFrom(1, limits.strokesOnHole), z.enum(unholedScores)])

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

const holeAndLap = z.tuple([hole, lap])
const holesAndLaps = z.array(holeAndLap).check(z.maxLength(60))

const place = z.strictObject({
  group: groupId,
  position: wholeFrom(1, 99),
  elsewhere: z.array(z.strictObject({ group: groupId, holes: holesAndLaps })).check(z.maxLength(20)),
})

const grant = { hash: hashText, role: z.enum(roles), group: z.nullable(groupId), label: textUpTo(limits.nameLength) }

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
  gameAllowance: proves<FactValues['gameAllowance']>()(wholeFrom(0, 100)),
  gameRounding: proves<FactValues['gameRounding']>()(z.enum(allowanceRoundings)),
  gameNineHoleIndex: proves<FactValues['gameNineHoleIndex']>()(z.enum(halfIndexMethods)),
  gameMatchStrokes: proves<FactValues['gameMatchStrokes']>()(z.enum(matchStrokesMethods)),
  closeBall: proves<FactValues['closeBall']>()(
    z.strictObject({ scores: z.array(z.tuple([hole, lap, scoreSchema])).check(z.maxLength(60)) }),
  ),
  closeGroup: proves<FactValues['closeGroup']>()(
    z.strictObject({ facts: z.array(z.tuple([z.string().check(z.maxLength(limits.keyLength)), jsonSchema])) }),
  ),
  invite: proves<FactValues['invite']>()(z.strictObject(grant)),
  key: proves<FactValues['key']>()(z.strictObject({ ...grant, invite: z.nullable(inviteId) })),
  voidKey: proves<FactValues['voidKey']>()(z.literal(true)),
  voidInvite: proves<FactValues['voidInvite']>()(z.literal(true)),
} satisfies Record<FactKind, z.ZodMiniType>

/** True when this version understands the value; a newer version's is kept, passed on and left out of the sums. */
export const isKnownValue = (kind: FactKind, value: Json): boolean => factSchemas[kind].safeParse(value).success
