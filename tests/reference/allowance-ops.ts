import * as z from 'zod/mini'
import { playerAllowances, sideAllowances } from '#core/handicap/allowance.ts'
import { foursomesMatchStrokes } from '#core/handicap/foursomes-match-strokes.ts'
import { playoffHandicap } from '#core/handicap/playoff-handicap.ts'
import { type MixedTees, teamHandicap, teamHandicapAcrossTees } from '#core/handicap/team-handicap.ts'
import { teeParAddition } from '#core/handicap/tee-par.ts'
import { must } from '#core/values/assert.ts'
import { type Fraction, roundHalfUp } from '#core/values/fraction.ts'
import type { Answer } from '#scripts/check-values/answer.ts'
import { type Calculations, calculation, unrounded } from './calculation.ts'
import { allowanceCodes, sideAllowanceCodes, teeParCodes } from './published-codes.ts'
import { codeOf, decimal, percent, tenths, whole } from './published-inputs.ts'

const partner = z.object({ handicap_index: tenths, slope: whole, course_rating: tenths, own_par: whole })
const partners = z.array(partner).check(z.minLength(2), z.maxLength(4))
const shares = z.array(percent).check(z.minLength(2), z.maxLength(4))
const pairOfHandicaps = z.array(decimal).check(z.length(2))

const teamAnswer = (value: Fraction): Answer => ({ unrounded: unrounded(value), team_handicap: roundHalfUp(value) })

/** The file names the shares of a side by their size, by who they go to, or both. */
function sideShares(format: string): Answer {
  const side = must(sideAllowanceCodes[format], 'allowance: a one-ball format')
  const [low, high] = sideAllowances[side]
  if (side === 'foursomes') return { combined: low }
  return side === 'greensomes' || side === 'chapman' ? { low, high } : { low_to_high: [...sideAllowances[side]] }
}

const roundOfTable = z.union([
  z
    .object({ round_type: z.enum(['stroke', 'match']), format: z.string() })
    .check(z.refine(({ round_type, format }) => Object.hasOwn(allowanceCodes, `${round_type} ${format}`))),
  z.object({ round_type: z.literal('other'), format: codeOf(sideAllowanceCodes) }),
])

const mixedTees = z.union([
  z.object({ method: z.literal('one_tee_par'), par_used: whole, players: partners, pct_low_to_high: shares }),
  z.object({ method: z.literal('par_difference_in_shares'), players: partners, pct_low_to_high: shares }),
])

/** Allowances, tees of different par, sides of one ball: section b of the published figures. */
export const allowanceOps: Calculations = [
  [
    'allowance',
    calculation(roundOfTable, ({ round_type, format }) => {
      if (round_type === 'other') return { pct: sideShares(format) }
      return { pct: playerAllowances[must(allowanceCodes[`${round_type} ${format}`], 'allowance: a row')] }
    }),
  ],
  [
    'adjust_for_tee_par',
    calculation(
      z.object({ playing_handicap: whole, own_par: whole, lowest_par_in_field: whole, format: codeOf(teeParCodes) }),
      ({ playing_handicap, own_par, lowest_par_in_field, format }) => ({
        playing_handicap: playing_handicap + teeParAddition(teeParCodes[format], own_par, lowest_par_in_field),
      }),
    ),
  ],
  [
    'team_handicap',
    calculation(
      z
        .object({ course_handicaps_unrounded: z.array(decimal), pct_low_to_high: shares })
        .check(z.refine(side => side.course_handicaps_unrounded.length === side.pct_low_to_high.length)),
      input => teamAnswer(teamHandicap(input.course_handicaps_unrounded, input.pct_low_to_high)),
    ),
  ],
  [
    'team_handicap_mixed_tees',
    calculation(
      mixedTees.check(z.refine(({ players, pct_low_to_high }) => players.length === pct_low_to_high.length)),
      input => {
        const method: MixedTees =
          input.method === 'one_tee_par'
            ? { method: 'one-tee-par', par: input.par_used }
            : { method: 'par-difference-in-shares' }
        const side = input.players.map(player => ({
          indexTenths: player.handicap_index,
          ratings: { courseRatingTenths: player.course_rating, slope: player.slope, par: player.own_par },
        }))
        return teamAnswer(teamHandicapAcrossTees(method, side, input.pct_low_to_high))
      },
    ),
  ],
  [
    'foursomes_match_strokes',
    calculation(z.object({ side1: pairOfHandicaps, side2: pairOfHandicaps }), ({ side1, side2 }) => {
      const printed = foursomesMatchStrokes('from-rounded-side-handicaps', side1, side2)
      const difference = foursomesMatchStrokes('half-of-difference', side1, side2)
      const receiver = difference.receiver ?? printed.receiver
      return {
        printed_method: printed.strokes,
        difference_method: difference.strokes,
        receives: receiver === null ? null : receiver === 'first' ? 'side1' : 'side2',
      }
    }),
  ],
  [
    'playoff_handicap',
    calculation(
      z.object({ playing_handicap: whole, playoff_holes: z.int().check(z.gte(1), z.lte(18)) }),
      ({ playing_handicap, playoff_holes }) => ({ strokes: playoffHandicap(playing_handicap, playoff_holes) }),
    ),
  ],
]
