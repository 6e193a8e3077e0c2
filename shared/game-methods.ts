import * as z from 'zod/mini'
import { countbackHoles, countbackMethods } from '#core/card/countback-methods.ts'
import {
  type GameMethods,
  type GameSetting,
  mixedTeesMethods,
  pressMethods,
  tieEnds,
  tieSchemes,
} from '#core/formats/game-methods.ts'
import { shortTeamMethods } from '#core/formats/ghost.ts'
import { skinsLeftMethods, skinsMethods } from '#core/formats/skins-methods.ts'
import { courseHandicapMethods, halfIndexMethods } from '#core/handicap/course-handicap.ts'
import { foursomesMatchMethods } from '#core/handicap/foursomes-match-strokes.ts'
import { matchStrokesMethods } from '#core/handicap/match-strokes.ts'
import { allowanceRoundings } from '#core/handicap/playing-handicap.ts'
import type { BallId } from '#core/values/ids.ts'
import { idOf, wholeFrom } from './atoms.ts'
import { limits } from './limits.ts'
import { proves } from './proof.ts'

type Value<K extends GameSetting> = NonNullable<GameMethods[K]>

const maximumScore = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('twice-par') }),
  z.strictObject({ kind: z.literal('net-double-bogey') }),
  z.strictObject({ kind: z.literal('fixed'), strokes: wholeFrom(1, limits.strokesOnHole) }),
])

/** Of a ball of two to four players. */
const shares = z.array(wholeFrom(0, 100)).check(z.minLength(2), z.maxLength(4))

const ties = z.strictObject({
  method: z.enum(countbackMethods),
  scheme: z.enum(tieSchemes),
  holes: z.enum(countbackHoles),
  ifStillTied: z.enum(tieEnds),
})

/** The methods of a game, each of its own: a fact holds one of them, a plain file those it names. */
export const gameMethods = {
  allowancePercent: proves<Value<'allowancePercent'>>()(wholeFrom(0, 100)),
  rounding: proves<Value<'rounding'>>()(z.enum(allowanceRoundings)),
  courseHandicap: proves<Value<'courseHandicap'>>()(z.enum(courseHandicapMethods)),
  nineHoleIndex: proves<Value<'nineHoleIndex'>>()(z.enum(halfIndexMethods)),
  matchStrokes: proves<Value<'matchStrokes'>>()(z.enum(matchStrokesMethods)),
  sideStrokes: proves<Value<'sideStrokes'>>()(z.enum(foursomesMatchMethods)),
  handicapShares: proves<Value<'handicapShares'>>()(z.array(shares).check(z.minLength(1), z.maxLength(3))),
  mixedTees: proves<Value<'mixedTees'>>()(z.enum(mixedTeesMethods)),
  countingBalls: proves<Value<'countingBalls'>>()(z.array(wholeFrom(1, 9)).check(z.minLength(1), z.maxLength(18))),
  shortTeam: proves<Value<'shortTeam'>>()(z.enum(shortTeamMethods)),
  drawnCard: proves<Value<'drawnCard'>>()(idOf<BallId>()),
  maximumScore: proves<Value<'maximumScore'>>()(maximumScore),
  skins: proves<Value<'skins'>>()(z.enum(skinsMethods)),
  skinsLeft: proves<Value<'skinsLeft'>>()(z.enum(skinsLeftMethods)),
  presses: proves<Value<'presses'>>()(z.enum(pressMethods)),
  ties: proves<Value<'ties'>>()(ties),
} satisfies Record<GameSetting, z.ZodMiniType>
