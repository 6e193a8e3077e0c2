import * as z from 'zod/mini'
import { matchHole } from '#core/formats/hole-by-nets.ts'
import { formatMatchResult, type MatchResult, matchStateOf } from '#core/formats/match-state.ts'
import { cappedGross, type MaximumScore, maximumForHole } from '#core/formats/maximum-score.ts'
import { parBogey } from '#core/formats/par-bogey.ts'
import { stablefordPoints } from '#core/formats/stableford-points.ts'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'
import { must } from '#core/values/assert.ts'
import { type Calculations, calculation } from './calculation.ts'
import { holeStrokes, type RoundScores, roundScores, score, whole } from './published-inputs.ts'

type HoleMeasure = (par: number, strokesReceived: number, gross: number | null) => number

function measureRound(round: RoundScores, measure: HoleMeasure): { perHole: number[]; total: number } {
  const strokes = allocateStrokes(round.playing_handicap, round.stroke_index)
  const perHole = round.par.map((par, hole) =>
    measure(par, must(strokes[hole], 'a hole of the round'), round.gross[hole] ?? null),
  )
  return { perHole, total: perHole.reduce((sum, each) => sum + each, 0) }
}

/** The file writes the number of an extra hole into the result. */
const resultText = (result: MatchResult): string =>
  result.kind === 'won-on-extra-hole' ? `${formatMatchResult(result)}, hole ${result.hole}` : formatMatchResult(result)

const maximum = z
  .object({
    kind: z.enum(['two_times_par', 'net_double_bogey', 'fixed']),
    par: whole,
    strokes_received: whole,
    fixed: z.nullable(whole),
  })
  .check(z.refine(({ kind, fixed }) => kind !== 'fixed' || fixed !== null))

function maximumOf({ kind, fixed }: z.output<typeof maximum>): MaximumScore {
  if (kind === 'fixed') return { kind, strokes: must(fixed, 'maximum_for_hole: a fixed maximum') }
  return { kind: kind === 'two_times_par' ? 'twice-par' : 'net-double-bogey' }
}

/** Forms of play: section f of the published figures. */
export const formatOps: Calculations = [
  [
    'stableford_points',
    calculation(holeStrokes, ({ par, strokes_received, gross }) => ({
      points: stablefordPoints(par, strokes_received, gross),
    })),
  ],
  [
    'stableford_round',
    calculation(roundScores, input => {
      const { perHole, total } = measureRound(input, stablefordPoints)
      return { points_per_hole: perHole, total }
    }),
  ],
  [
    'par_bogey',
    calculation(holeStrokes, ({ par, strokes_received, gross }) => ({
      result: parBogey(par, strokes_received, gross),
    })),
  ],
  [
    'par_bogey_round',
    calculation(roundScores, input => {
      const { perHole, total } = measureRound(input, parBogey)
      return { per_hole: perHole, total }
    }),
  ],
  [
    'maximum_for_hole',
    calculation(maximum, input => ({
      maximum: maximumForHole(maximumOf(input), input.par, input.strokes_received),
    })),
  ],
  [
    'maximum_score_hole',
    calculation(z.object({ gross: score, maximum: whole, strokes_received: whole }), input => ({
      net_score: cappedGross(input.gross, input.maximum) - input.strokes_received,
    })),
  ],
  [
    'match_hole',
    calculation(
      z.object({ gross_a: score, strokes_a: whole, gross_b: score, strokes_b: whole }),
      ({ gross_a, strokes_a, gross_b, strokes_b }) => ({
        result_for_a: matchHole(
          gross_a === null ? 'picked-up' : gross_a - strokes_a,
          gross_b === null ? 'picked-up' : gross_b - strokes_b,
        ),
      }),
    ),
  ],
  [
    'match_state',
    calculation(
      z.object({ holes: z.array(z.literal([1, 0, -1])), scheduled: z.int().check(z.gte(1), z.lte(54)) }),
      ({ holes, scheduled }) => {
        const state = matchStateOf(holes, scheduled)
        return {
          winner: state.winner,
          leader: state.leader,
          lead: state.lead,
          to_play: state.toPlay,
          holes_played: state.holesPlayed,
          dormie: state.dormie,
          result: state.result === null ? null : resultText(state.result),
        }
      },
    ),
  ],
]
