import * as z from 'zod/mini'
import { holeOutMethods } from '#core/formats/happenings.ts'
import { playingConditionsValues } from '#core/handicap/playing-conditions.ts'
import { certifiers } from '#core/outing/facts.ts'
import type { BallId, GameId, PlayerId, RulingId } from '#core/values/ids.ts'
import { groupId, idOf, textUpTo, wholeFrom } from './atoms.ts'
import { closedScores, holeAndLap } from './facts.ts'
import { limits } from './limits.ts'

const ball = idOf<BallId>()
const game = idOf<GameId>()
const hole = wholeFrom(1, 18)
const lap = z.optional(wholeFrom(1, 9))
const strokesOnHole = wholeFrom(1, limits.strokesOnHole)
const reason = z.optional(textUpTo(limits.reasonLength))
const to = z.optional(ball)

const concession = z.discriminatedUnion('what', [
  z.strictObject({ what: z.literal('stroke'), game, ball, hole, lap, score: strokesOnHole }),
  z.strictObject({ what: z.literal('hole'), game, by: ball, to, hole, lap }),
  z.strictObject({ what: z.literal('match'), game, by: ball, to }),
])

const agreed = { game, group: z.optional(groupId), between: z.tuple([ball, ball]), won: z.nullable(ball) }

const byHole = <S extends z.ZodMiniType>(value: S) =>
  z.strictObject({ ball, lap, holes: z.array(z.nullable(value)).check(z.maxLength(18)) })

const ruled = {
  id: idOf<RulingId>(),
  games: z.optional(z.array(game).check(z.minLength(1), z.maxLength(40))),
  rule: z.optional(textUpTo(limits.titleLength)),
  reason,
}

const ruling = z.discriminatedUnion('kind', [
  z.strictObject({ ...ruled, kind: z.literal('no-penalty'), ball: z.optional(ball) }),
  z.strictObject({
    ...ruled,
    kind: z.literal('penalty'),
    ball,
    hole: z.optional(hole),
    lap,
    strokes: wholeFrom(0, limits.strokesOnHole),
    holeLost: z.optional(z.boolean()),
  }),
  z.strictObject({ ...ruled, kind: z.literal('disqualified'), ball, hole: z.optional(hole), lap }),
  z.strictObject({
    ...ruled,
    kind: z.literal('plays-off'),
    ball,
    strokes: wholeFrom(-limits.handicapStrokes, limits.handicapStrokes),
  }),
  z.strictObject({
    ...ruled,
    kind: z.literal('net-off'),
    ball,
    strokes: wholeFrom(-limits.handicapStrokes, limits.handicapStrokes),
  }),
])

const lists = {
  concessions: z.array(concession),
  agreedHoles: z.array(z.strictObject({ ...agreed, hole, lap })),
  agreedResults: z.array(z.strictObject({ ...agreed, by: wholeFrom(0, 18), left: wholeFrom(0, 17) })),
  presses: z.array(z.strictObject({ game, by: ball, hole, lap })),
  holesOut: z.array(z.strictObject({ hole, lap, counts: z.enum(holeOutMethods), reason })),
  drives: z.array(byHole(idOf<PlayerId>())),
  teeShots: z.array(z.strictObject({ ball, player: idOf<PlayerId>(), hole, lap })),
  likelyScores: z.array(byHole(strokesOnHole)),
  absences: z.array(
    z.strictObject({
      ball,
      joinedAt: z.optional(holeAndLap),
      leftAt: z.optional(holeAndLap),
      withdrawn: z.optional(z.boolean()),
      reason,
    }),
  ),
  markers: z.array(z.strictObject({ ball, marker: idOf<PlayerId>() })),
  certified: z.array(z.strictObject({ ball, by: z.enum(certifiers), scores: z.optional(closedScores) })),
  rulings: z.array(ruling),
}

const playingConditions = z.optional(z.strictObject({ strokes: z.literal(playingConditionsValues), reason }))

/** Fields of the plain file beside field, games and scores. */
export const plainNotes = {
  concessions: z.optional(lists.concessions),
  agreedHoles: z.optional(lists.agreedHoles),
  agreedResults: z.optional(lists.agreedResults),
  presses: z.optional(lists.presses),
  holesOut: z.optional(lists.holesOut),
  drives: z.optional(lists.drives),
  teeShots: z.optional(lists.teeShots),
  likelyScores: z.optional(lists.likelyScores),
  absences: z.optional(lists.absences),
  markers: z.optional(lists.markers),
  certified: z.optional(lists.certified),
  rulings: z.optional(lists.rulings),
  playingConditions,
}

/** The same with every list in it: what `settle` prints. */
export const everyPlainNote = z.strictObject({ ...lists, playingConditions })
