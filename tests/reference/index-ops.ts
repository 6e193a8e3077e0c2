import * as z from 'zod/mini'
import {
  exceptionalReduction,
  reduceRecord,
  strokesBelowIndex,
  totalReduction,
} from '#core/handicap/exceptional-score.ts'
import {
  averageDifferential,
  capIndex,
  formatIndex,
  handicapIndex,
  indexTableRow,
} from '#core/handicap/handicap-index.ts'
import { capRise } from '#core/handicap/index-cap.ts'
import { updateIndex } from '#core/handicap/index-update.ts'
import { type IssuedIndex, lowIndex, lowIndexForCap } from '#core/handicap/low-index.ts'
import { must } from '#core/values/assert.ts'
import { type Fraction, fraction, times } from '#core/values/fraction.ts'
import type { Answer } from '#scripts/check-values/answer.ts'
import { type Calculations, calculation, inTenths, unrounded } from './calculation.ts'
import { calendarDay, decimal, tenths } from './published-inputs.ts'

const count = z.int().check(z.gte(0))
const reduction = z.pipe(
  z.literal([0, -1, -2]),
  z.transform(strokes => 10 * strokes),
)
const record = z.array(tenths).check(z.minLength(3))
const history = z.array(
  z.pipe(
    z.tuple([calendarDay, tenths]),
    z.transform(([day, indexTenths]): IssuedIndex => ({ day, indexTenths })),
  ),
)

/** A figure in tenths as the file prints it, in strokes. */
const unroundedTenths = (value: Fraction): Answer => unrounded(times(value, fraction(1, 10)))

const nullableTenths = (value: number | null): number | null => (value === null ? null : inTenths(value))

/** A record with its newest score, whose older differentials the file gives without what they were reduced by. */
const recordWithNewest = z.object({
  differentials_newest_first: record,
  newest_differential_unrounded: decimal,
  handicap_index_when_newest_played: tenths,
  earlier_reductions_in_record: z.pipe(
    z.int().check(z.lte(0)),
    z.transform(strokes => 10 * strokes),
  ),
  low_handicap_index_for_cap: z.nullable(tenths),
})

function updatedIndex(input: z.output<typeof recordWithNewest>): Answer {
  const [newest, ...older] = input.differentials_newest_first
  const update = must(
    updateIndex(
      {
        differentialsTenths: [
          must(newest, 'a record has a newest score'),
          ...reduceRecord(older, input.earlier_reductions_in_record),
        ],
        newestUnrounded: input.newest_differential_unrounded,
        indexWhenPlayedTenths: input.handicap_index_when_newest_played,
        lowIndexTenths: input.low_handicap_index_for_cap,
      },
      { exceptional: 'differential-unrounded', firstIndex: 'from-three-scores' },
    ),
    'a record of three scores has an Index',
  )
  return {
    reduction: inTenths(update.reductionTenths),
    differentials_after_reduction: update.differentialsTenths.map(inTenths),
    lowest_eight: update.countingTenths.map(inTenths),
    average: unroundedTenths(update.averageTenths),
    calculated_index: inTenths(update.calculatedTenths),
    cap: update.capped.cap,
    before_rounding: unroundedTenths(update.capped.unroundedTenths),
    handicap_index: inTenths(update.capped.indexTenths),
  }
}

/** The Handicap Index: the rest of section d of the published figures. */
export const indexOps: Calculations = [
  [
    'cap_index',
    calculation(z.object({ calculated: tenths }), ({ calculated }) => ({
      handicap_index: inTenths(capIndex(calculated)),
    })),
  ],
  ['format_index', calculation(z.object({ value: tenths }), ({ value }) => ({ text: formatIndex(value) }))],
  [
    'index_table_row',
    calculation(
      z
        .object({ scores_in_record: count, index_from_one_or_two_scores: z.optional(z.boolean()) })
        .check(z.refine(input => tableRow(input) !== null)),
      input => {
        const row = must(tableRow(input), 'index_table_row: enough scores')
        return { count_lowest: row.lowest, adjustment: inTenths(row.adjustmentTenths) }
      },
    ),
  ],
  [
    'handicap_index',
    calculation(z.object({ differentials_newest_first: record }), ({ differentials_newest_first: newestFirst }) => ({
      before_rounding: unroundedTenths(
        must(averageDifferential(newestFirst, 'from-three-scores'), 'three scores are enough'),
      ),
      handicap_index: nullableTenths(handicapIndex(newestFirst, 'from-three-scores')),
    })),
  ],
  [
    'low_handicap_index',
    calculation(z.object({ history, newest_score_date: calendarDay, scores_in_record: count }), input => ({
      low: nullableTenths(lowIndex(input.history, input.newest_score_date, input.scores_in_record)),
    })),
  ],
  [
    'low_index_for_cap',
    calculation(z.object({ history, previous_newest_score_date: calendarDay }), input => ({
      low: nullableTenths(lowIndexForCap(input.history, input.previous_newest_score_date)),
    })),
  ],
  [
    'apply_caps',
    calculation(z.object({ low_handicap_index: z.nullable(tenths), calculated_index: tenths }), input => {
      const { cap, unroundedTenths: before, indexTenths } = capRise(input.calculated_index, input.low_handicap_index)
      return { before_rounding: unroundedTenths(before), handicap_index: inTenths(indexTenths), cap }
    }),
  ],
  [
    'exceptional_reduction',
    calculation(z.object({ handicap_index_when_played: tenths, differential_unrounded: decimal }), input => {
      const { handicap_index_when_played: index, differential_unrounded: differential } = input
      return {
        difference_unrounded: unrounded(strokesBelowIndex(index, differential)),
        reduction: inTenths(exceptionalReduction('differential-unrounded', index, differential)),
        reduction_if_differential_rounded_first: inTenths(
          exceptionalReduction('differential-rounded-first', index, differential),
        ),
      }
    }),
  ],
  [
    'cumulative_reductions',
    calculation(z.object({ reductions: z.array(reduction) }), input => ({
      total_on_older_scores: inTenths(totalReduction(input.reductions)),
    })),
  ],
  [
    'apply_reduction_to_record',
    calculation(z.object({ differentials: z.array(tenths), reduction }), input => ({
      differentials: reduceRecord(input.differentials, input.reduction).map(inTenths),
    })),
  ],
  [
    'index_after_exceptional',
    // Every differential that counts falls by the reduction, and so does their average.
    calculation(z.object({ index_from_best8_before_reduction: tenths, reduction }), input => ({
      handicap_index: inTenths(capIndex(input.index_from_best8_before_reduction + input.reduction)),
    })),
  ],
  ['index_from_record', calculation(recordWithNewest, updatedIndex)],
]

function tableRow(input: {
  readonly scores_in_record: number
  readonly index_from_one_or_two_scores?: boolean | undefined
}): ReturnType<typeof indexTableRow> {
  const firstIndex = input.index_from_one_or_two_scores === true ? 'from-one-score' : 'from-three-scores'
  return indexTableRow(input.scores_in_record, firstIndex)
}
