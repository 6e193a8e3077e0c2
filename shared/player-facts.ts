import * as z from 'zod/mini'
import { ratedGenders } from '#core/handicap/slope.ts'
import type { FactKind } from '#core/outing/facts.ts'
import { parseKey } from '#core/outing/keys.ts'
import { type PlayerFactKind, type PlayerFactValues, strikes } from '#core/plan/facts.ts'
import { parsePlayerKey } from '#core/plan/keys.ts'
import type { Json } from '#core/values/json.ts'
import { lengthUnits } from '#core/values/length.ts'
import { wholeFrom } from './atoms.ts'
import { factSchemas } from './facts.ts'
import { type SchemaOfKey, schemaInOuting } from './op.ts'
import { proves } from './proof.ts'

/** Nobody carries a ball as far, in yards or metres. */
const longestLength = 500

/** More than anybody counts with one club. */
const mostShots = 9_999

const length = z.strictObject({ amount: wholeFrom(1, longestLength), unit: z.enum(lengthUnits) })

/** The shape of every kind's value in a player's own log, strict; equal to core's types or it does not compile. */
export const playerFactSchemas = {
  unit: proves<PlayerFactValues['unit']>()(z.enum(lengthUnits)),
  club: proves<PlayerFactValues['club']>()(z.strictObject({ carry: z.nullable(length) })),
  measured: proves<PlayerFactValues['measured']>()(length),
  spread: proves<PlayerFactValues['spread']>()(z.strictObject({ spread: length, shots: wholeFrom(2, mostShots) })),
  partSwing: proves<PlayerFactValues['partSwing']>()(length),
  strike: proves<PlayerFactValues['strike']>()(z.enum(strikes)),
  handicapIndex: proves<PlayerFactValues['handicapIndex']>()(wholeFrom(-100, 540)),
  ratings: proves<PlayerFactValues['ratings']>()(z.enum(ratedGenders)),
  favourite: proves<PlayerFactValues['favourite']>()(length),
  habit: proves<PlayerFactValues['habit']>()(z.boolean()),
  habitNumber: proves<PlayerFactValues['habitNumber']>()(
    z.strictObject({ amount: wholeFrom(0, longestLength), unit: z.enum(lengthUnits) }),
  ),
  rulesRound: proves<PlayerFactValues['rulesRound']>()(z.literal(true)),
} satisfies Record<PlayerFactKind, z.ZodMiniType>

/** Who is let into a log stands in every log alike. */
const accessKinds: readonly FactKind[] = ['invite', 'key', 'voidKey', 'voidInvite']

/** For `parseOp`: what a player's log may hold. */
export const schemaInPlayerLog: SchemaOfKey = key => {
  const own = parsePlayerKey(key)
  if (own) return playerFactSchemas[own.kind]
  const shared = parseKey(key)
  return shared && accessKinds.includes(shared.kind) ? factSchemas[shared.kind] : null
}

/** For a server, which holds logs of both kinds; who may write what of it is the roles' matter. */
export const schemaInAnyLog: SchemaOfKey = key => schemaInOuting(key) ?? schemaInPlayerLog(key)

/** True when this version understands the value; a newer version's is kept and left out of the advice. */
export const isKnownPlayerValue = (kind: PlayerFactKind, value: Json): boolean =>
  playerFactSchemas[kind].safeParse(value).success
