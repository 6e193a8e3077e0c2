import * as z from 'zod/mini'
import { formatMatchResult, type MatchResult, matchHole, matchStateOf } from '#core/formats/match-state.ts'
import { stablefordPoints } from '#core/formats/stableford-points.ts'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'
import { must } from '#core/values/assert.ts'
import { type Calculation, calculation } from './calculation.ts'
import { holeStrokes, type RoundScores, roundScores, score, whole } from './published-inputs.ts'

type HoleMeasure = (par: number, strokesReceived: number, gross: number | null) => number

/** A hole against its target is a match hole against par in which no score loses. */
const parBogey: HoleMeasure = (par, strokesReceived, gross) =>
  must(matchHole(gross === null ? 'picked-up' : gross - strokesReceived, par), 'par_bogey: both sides are known')

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

/** Section f of the published figures. */
export const formatOps: readonly (readonly [string, Calculation])[] = [
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
