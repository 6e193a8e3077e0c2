import * as z from 'zod/mini'
import { type CountbackCard, countback, countbackOrder, handicapShare } from '#core/card/countback.ts'
import { roundFrom } from '#core/card/order-of-play.ts'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'
import { must } from '#core/values/assert.ts'
import { type Calculations, calculation, measured } from './calculation.ts'
import { countbackMethodCodes, countbackStepCodes } from './published-codes.ts'
import { codeOf, hole, playedOf18, strokeIndexes, whole } from './published-inputs.ts'

const stepCode = (name: string): string => must(countbackStepCodes[name], `countback: a code for ${name}`)

const tiedCards = z
  .object({
    scores_a: playedOf18,
    scores_b: playedOf18,
    playing_handicap_a: whole,
    playing_handicap_b: whole,
    method: codeOf(countbackMethodCodes),
    stroke_index: z.optional(strokeIndexes),
    higher_is_better: z.boolean(),
  })
  .check(
    z.refine(({ method, stroke_index }) => (method === 'index') === (stroke_index !== undefined)),
    z.refine(({ method, higher_is_better }) => (method === 'points') === higher_is_better),
  )

const cardOf = (
  scores: readonly number[],
  playingHandicap: number,
  indexes: readonly number[] = [],
): CountbackCard => ({
  scores,
  playingHandicap,
  strokes: indexes.length === 0 ? [] : allocateStrokes(playingHandicap, indexes),
})

/** Ties: section g of the published figures. */
export const countbackOps: Calculations = [
  [
    'countback',
    calculation(tiedCards, input => {
      const cards = [
        cardOf(input.scores_a, input.playing_handicap_a, input.stroke_index),
        cardOf(input.scores_b, input.playing_handicap_b, input.stroke_index),
      ]
      const { winner, decidedBy, working } = countback(countbackMethodCodes[input.method], 'nine-six-three-one', cards)
      return {
        winner: winner === null ? null : winner === 0 ? 'A' : 'B',
        decided_by: decidedBy === null ? null : stepCode(decidedBy),
        steps: working.map(({ name, figures }) => [stepCode(name), ...figures.map(measured)]),
      }
    }),
  ],
  [
    'countback_fraction',
    calculation(z.object({ playing_handicap: whole }), ({ playing_handicap: handicap }) => ({
      last9: measured(handicapShare(handicap, 9, 18)),
      last6: measured(handicapShare(handicap, 6, 18)),
      last3: measured(handicapShare(handicap, 3, 18)),
      hole18: measured(handicapShare(handicap, 1, 18)),
    })),
  ],
  [
    'countback_fraction_nine_holes',
    calculation(z.object({ playing_handicap_9: whole }), ({ playing_handicap_9: handicap }) => ({
      last6: measured(handicapShare(handicap, 6, 9)),
      last3: measured(handicapShare(handicap, 3, 9)),
      last1: measured(handicapShare(handicap, 1, 9)),
    })),
  ],
  [
    'countback_last_nine_holes',
    calculation(z.object({ starting_hole: hole }), ({ starting_hole }) => {
      const played = roundFrom(starting_hole, 18).map(each => each.hole)
      const lastNine = countbackOrder('card-order', played).slice(9)
      return { last_nine: `${lastNine.at(0)}-${lastNine.at(-1)}` }
    }),
  ],
]
