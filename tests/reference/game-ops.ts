import * as z from 'zod/mini'
import { foursomesTeePlayer, teeHoles } from '#core/formats/foursomes-tee.ts'
import type { KnownNet } from '#core/formats/known-net.ts'
import { ruleOnUnfinishedSide } from '#core/formats/rulings/unfinished-side.ts'
import { sixHolePairs, sixHoleTotals } from '#core/formats/six-hole-partners.ts'
import { skinsOf } from '#core/formats/skins.ts'
import { splitPoints } from '#core/formats/split-points.ts'
import { must } from '#core/values/assert.ts'
import { type Fraction, toNumber } from '#core/values/fraction.ts'
import { resultOf, sideNetOf } from '#tests/kit/played-game.ts'
import { type Calculations, calculation } from './calculation.ts'
import { unfinishedSideCodes } from './published-codes.ts'
import { hole, score, whole } from './published-inputs.ts'

/** `null` in the file is a ball picked up. */
const net = z.pipe(
  z.nullable(whole),
  z.transform((written): KnownNet => written ?? 'picked-up'),
)
const threePlayers = z.array(net).check(z.length(3))
const matchHoles = (count: number) => z.array(z.literal([1, 0, -1])).check(z.length(count))

const fourBallPartner = z.object({ gross: score, strokes: whole })
const netOf = ({ gross, strokes }: z.output<typeof fourBallPartner>): KnownNet =>
  gross === null ? 'picked-up' : gross - strokes

/** The game itself, by scores that make the holes so. */
const nassauOf = (holes: readonly (1 | 0 | -1)[]) =>
  resultOf('parts', {
    format: 'nassau',
    sides: [['a'], ['b']],
    scores: { a: holes.map(won => 5 - won), b: holes.map(() => 5) },
  })

const firstShare = (shares: readonly Fraction[] | null): Fraction => must(shares?.[0], 'a part that is over is shared')

const ninePoints = (nets: readonly KnownNet[]): number[] => splitPoints(nets, 'nine-points').map(toNumber)

const fourNames = z.array(z.string()).check(z.length(4))

/** Games within a round: sections f and h of the published figures. */
export const gameOps: Calculations = [
  [
    'four_ball_hole',
    calculation(
      z.object({ form: z.enum(['match', 'stroke']), partner_a: fourBallPartner, partner_b: fourBallPartner }),
      ({ form, partner_a, partner_b }) => {
        const sideNet = sideNetOf([netOf(partner_a), netOf(partner_b)], 1)
        const ruling = ruleOnUnfinishedSide(form === 'match' ? 'match' : 'stroke-play')
        return { side_net: sideNet, ruling: sideNet === null ? unfinishedSideCodes[ruling] : null }
      },
    ),
  ],
  [
    'best_n_of_4_hole',
    calculation(
      z.object({ net_scores: z.array(net).check(z.length(4)), count: z.int().check(z.gte(1), z.lte(4)) }),
      ({ net_scores, count }) => ({ team_score: sideNetOf(net_scores, count) }),
    ),
  ],
  [
    'foursomes_tee_order',
    calculation(z.object({ a_tees_on: z.enum(teeHoles), hole }), input => ({
      tee_player: foursomesTeePlayer(input.a_tees_on, input.hole) === 'first' ? 'A' : 'B',
    })),
  ],
  [
    'three_part_match',
    calculation(z.object({ holes: matchHoles(18) }), ({ holes }) => {
      const { parts } = nassauOf(holes)
      const [front = null, back = null, overall = null] = parts.map(({ up }) => up)
      const shares = parts.map(part => toNumber(firstShare(part.shares)))
      const count = (share: number) => shares.filter(each => each === share).length
      return { front, back, overall, points_a: count(1), points_b: count(0), halved: count(0.5) }
    }),
  ],
  [
    'skins',
    calculation(
      z
        .object({ net_scores_by_hole: z.array(z.array(net).check(z.minLength(1))), carry_over: z.boolean() })
        .check(z.refine(({ net_scores_by_hole: holes }) => new Set(holes.map(nets => nets.length)).size <= 1)),
      ({ net_scores_by_hole, carry_over }) => {
        const { totals, unclaimed } = skinsOf(net_scores_by_hole, carry_over ? 'carry-over' : 'no-carry-over')
        return { totals, unclaimed }
      },
    ),
  ],
  [
    'nine_points_hole',
    calculation(z.object({ net_scores: threePlayers }), ({ net_scores }) => ({ points: ninePoints(net_scores) })),
  ],
  [
    'nine_points_round',
    calculation(z.object({ net_scores_by_hole: z.array(threePlayers) }), ({ net_scores_by_hole }) => {
      const byHole = net_scores_by_hole.map(ninePoints)
      const totals = [0, 1, 2].map(player =>
        byHole.reduce((sum, points) => sum + must(points[player], 'three players'), 0),
      )
      return { totals, check_sum: totals.reduce((sum, each) => sum + each, 0) }
    }),
  ],
  [
    'six_hole_partners',
    calculation(z.object({ players: fourNames }), ({ players }) => {
      const named = sixHolePairs.map(pairs => pairs.map(pair => pair.map(at => must(players[at], 'four players'))))
      const [first, second, third] = named
      return {
        holes_1_6: must(first, 'three sixes'),
        holes_7_12: must(second, 'three sixes'),
        holes_13_18: must(third, 'three sixes'),
      }
    }),
  ],
  [
    'six_hole_totals',
    calculation(z.object({ results_for_first_listed_pair: matchHoles(3) }), input => {
      const totals = sixHoleTotals(input.results_for_first_listed_pair).map(toNumber)
      return Object.fromEntries(['A', 'B', 'C', 'D'].map((name, at) => [name, must(totals[at], 'four players')]))
    }),
  ],
]
