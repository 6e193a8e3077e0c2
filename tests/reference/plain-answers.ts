import {
  allocate,
  averageOfLowest,
  courseHandicap9,
  courseHandicap18,
  differential9,
  differential18,
  digits,
  type Exact,
  halfUp,
  index,
  matchFromPlayingHandicaps,
  matchFromRounded,
  matchFromUnrounded,
  mostOnHole,
  share,
  stableford,
  sum,
} from './plain-handicap.ts'

/** The input of a check value, in the file's own words. */
export type PlainInput = Readonly<Record<string, unknown>>

const number = (input: PlainInput, key: string): bigint => digits(input[key] as number, 0)
const tenths = (input: PlainInput, key: string): bigint => digits(input[key] as number, 1)
const numbers = (input: PlainInput, key: string, places: number): bigint[] =>
  (input[key] as readonly (number | string)[]).map(each => digits(each, places))

/** A figure before rounding, to the six places that the file prints. */
const sixPlaces = (value: Exact): number =>
  Number(halfUp({ over: value.over * 1_000_000n, under: value.under })) / 1_000_000

/** The same of a figure in tenths. */
const sixPlacesOfTenths = ({ over, under }: Exact): number => sixPlaces({ over, under: 10n * under })

const oneTenth = (value: bigint): number => Number(value) / 10

const eighteen = (input: PlainInput): Exact =>
  courseHandicap18(
    tenths(input, 'handicap_index'),
    number(input, 'slope'),
    tenths(input, 'course_rating'),
    number(input, 'par'),
  )

const nine = (input: PlainInput, halfToTenth: boolean): Exact =>
  courseHandicap9(
    tenths(input, 'handicap_index'),
    number(input, 'slope9'),
    tenths(input, 'course_rating9'),
    number(input, 'par9'),
    halfToTenth,
  )

const bothForms = (value: Exact): object => ({ unrounded: sixPlaces(value), rounded: Number(halfUp(value)) })

function playing(value: Exact, input: PlainInput): object {
  const percent = number(input, 'allowance_pct')
  return {
    playing_handicap: Number(halfUp(share(value, percent))),
    if_course_handicap_rounded_first: Number(halfUp(share({ over: halfUp(value), under: 1n }, percent))),
  }
}

const nineHoles = (input: PlainInput): Exact =>
  differential9(
    number(input, 'adjusted_gross'),
    tenths(input, 'course_rating9'),
    number(input, 'slope9'),
    number(input, 'pcc'),
  )

function matchStrokes(input: PlainInput): object {
  const handicaps = numbers(input, 'course_handicaps_unrounded', 6).map(over => ({ over, under: 1_000_000n }))
  const percent = number(input, 'allowance_pct')
  return {
    playing_handicaps: handicaps.map(each => Number(halfUp(share(each, percent)))),
    strokes_from_lowest_playing_handicap: matchFromPlayingHandicaps(handicaps, percent).map(Number),
    strokes_difference_of_unrounded_course_handicaps: matchFromUnrounded(handicaps, percent).map(halfUp).map(Number),
    strokes_difference_of_rounded_course_handicaps: matchFromRounded(handicaps, percent).map(halfUp).map(Number),
  }
}

function stablefordRound(input: PlainInput): object {
  const strokes = allocate(number(input, 'playing_handicap'), numbers(input, 'stroke_index', 0))
  const pars = numbers(input, 'par', 0)
  const gross = input.gross as readonly (number | null)[]
  const points = gross.map((each, at) =>
    each === null ? 0 : Number(stableford(pars[at] ?? 0n, strokes[at] ?? 0n, BigInt(each))),
  )
  return { points_per_hole: points, total: points.reduce((total, each) => total + each, 0) }
}

function adjustedGross(input: PlainInput): object {
  const handicap = input.course_handicap === null ? null : number(input, 'course_handicap')
  const strokes = allocate(handicap ?? 0n, numbers(input, 'stroke_index', 0))
  const most = numbers(input, 'par', 0).map((par, at) => Number(mostOnHole(par, handicap, strokes[at] ?? 0n)))
  const gross = input.gross as readonly number[]
  return {
    max_per_hole: most,
    gross_total: gross.reduce((total, each) => total + each, 0),
    adjusted_gross: gross.reduce((total, each, at) => total + Math.min(each, most[at] ?? 0), 0),
  }
}

function pointsOfHole(input: PlainInput): number {
  if (input.gross === null) return 0
  return Number(stableford(number(input, 'par'), number(input, 'strokes_received'), number(input, 'gross')))
}

const differentialForms = (value: Exact): object => ({
  unrounded: sixPlacesOfTenths(value),
  differential: oneTenth(halfUp(value)),
})

/** What the plain computation makes of a check value, in the file's own words, by the calculation. */
export const plainAnswers: Readonly<Record<string, (input: PlainInput) => object>> = {
  course_handicap_18: input => bothForms(eighteen(input)),
  course_handicap_18_no_cr_par: input => bothForms(eighteen({ ...input, course_rating: 72, par: 72 })),
  course_handicap_9: input => ({
    half_index_rounded_to_tenth: bothForms(nine(input, true)),
    half_index_unrounded: bothForms(nine(input, false)),
  }),
  playing_handicap: input => ({
    course_handicap_unrounded: sixPlaces(eighteen(input)),
    ...playing(eighteen(input), input),
  }),
  playing_handicap_9: input => ({
    course_handicap_9_unrounded: sixPlaces(nine(input, false)),
    ...playing(nine(input, false), input),
  }),
  match_strokes: matchStrokes,
  allocate_strokes: input => ({
    strokes_per_hole: allocate(number(input, 'playing_handicap'), numbers(input, 'stroke_index', 0)).map(Number),
  }),
  stableford_points: input => ({ points: pointsOfHole(input) }),
  stableford_round: stablefordRound,
  adjusted_gross: adjustedGross,
  score_differential_18: input =>
    differentialForms(
      differential18(
        number(input, 'adjusted_gross'),
        tenths(input, 'course_rating'),
        number(input, 'slope'),
        number(input, 'pcc'),
      ),
    ),
  combine_two_nine_hole_2020: input =>
    differentialForms(sum(nineHoles(input.first as PlainInput), nineHoles(input.second as PlainInput))),
  handicap_index: input => {
    const record = numbers(input, 'differentials_newest_first', 1)
    return { before_rounding: sixPlacesOfTenths(averageOfLowest(record)), handicap_index: oneTenth(index(record)) }
  },
}
