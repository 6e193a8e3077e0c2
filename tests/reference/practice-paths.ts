import type { Json } from '#core/values/json.ts'

/** Where an outing's output has what a case expects, and how it is read where the case says it in other words. */
export interface PracticePath {
  readonly got: string
  readonly expected: string
  readonly read?: (got: Json) => Json
}

const at = (got: string, expected: string, read?: (got: Json) => Json): PracticePath =>
  read === undefined ? { got, expected } : { got, expected, read }

const numbers = (json: Json): number[] => (json as readonly Json[]).map(Number)
const sum = (json: Json): number => numbers(json).reduce((total, each) => total + each, 0)
const countOf = (value: number) => (json: Json) => numbers(json).filter(each => each === value).length
const running = (json: Json): number[] => numbers(json).map((_, place) => sum(numbers(json).slice(0, place + 1)))
const inCase = (word: string) => (json: Json) => (json === true ? word : null)
const capitals = (json: Json): Json => (json as string[][]).map(([id = '']) => id.toUpperCase())
const capital = (json: Json): Json => String(json).toUpperCase()

interface OnHole {
  readonly hole: number
  readonly strokes?: number
  readonly score?: Json
}
const holesWhere = (isMeant: (hole: OnHole) => boolean) => (json: Json) =>
  (json as unknown as OnHole[]).filter(isMeant).map(({ hole }) => hole)
const withStrokes = holesWhere(({ strokes = 0 }) => strokes > 0)
const pickedUp = holesWhere(({ score }) => score === 'picked-up')

/** Whose hole it was, by the names of the two sides in the case. */
const winnerOf =
  ([first, second]: readonly [string, string], half = 'halved') =>
  (json: Json): string =>
    json === 1 ? first : json === -1 ? second : half

/** How a match is written in the cases, by the words of the output. */
const sentence =
  ([first, second]: readonly [string, string]) =>
  (json: Json): string => {
    const { winner, text } = json as { winner: 'A' | 'B' | null; text: string }
    if (winner === null) return text === 'halved' ? 'tied after 18' : text
    return `${winner === 'A' ? first : second} wins ${text.replace('&', 'and')}`
  }

const line = (game: string, side: string): string => `games[id=${game}].lines[side=${side}]`
const off = (game: string, ball: string): string => `games[id=${game}].strokes[ball=${ball}]`
const match = (game: string): string => `games[id=${game}].matches[0]`
const holeOf = (place: string, hole: number): string => `${place}.holes[hole=${hole}]`
const sides = ['AB', 'CD'] as const
const decidedBy = (step: string, word: string) => (json: Json) => (json === step ? word : json)

const tie = (game: string): string => `games[id=${game}].ties[0]`
const figure = (game: string, step: string, place: number): string =>
  `${tie(game)}.working[name=${step}].figures[${place}]`

/** Strokes that each player of a four-ball match receives. */
const strokesFor = (game: string, method: string): PracticePath[] =>
  ['a', 'b', 'c', 'd'].map((ball, place) => at(`${off(game, ball)}.strokes`, `${method}.P${place + 1}`))

export const practicePaths: Readonly<Record<string, readonly PracticePath[]>> = {
  'HC-01': [
    at('players[id=a].courseHandicap.unrounded', 'course_handicap_unrounded'),
    at('players[id=a].courseHandicap.rounded', 'course_handicap'),
    at(`${off('once', 'a')}.playingHandicap`, 'playing_handicap'),
    at(`${off('first', 'a')}.playingHandicap`, 'playing_handicap_if_wrongly_rounded_first'),
  ],
  'HC-03': [5, 2, 11, 8].flatMap(hole => [
    at(`${off('points', 'a')}.byHole[hole=${hole}].strokes`, `strokes.${hole}`),
    at(`${holeOf(line('points', 'a'), hole)}.value`, `points.${hole}`),
  ]),
  'HC-04': [
    at(`${line('points', 'a')}.total`, 'total'),
    at(`${holeOf(line('points', 'a'), 6)}.value`, 'hole_6'),
    at(`${holeOf(line('points', 'a'), 16)}.value`, 'hole_16'),
  ],
  'HC-07': [at(`${off('match', 'b')}.strokes`, 'strokes'), at(`${off('match', 'b')}.byHole`, 'holes', withStrokes)],
  'ST-01': [
    at(`${line('points', 'a')}.holes[*].value`, 'points'),
    at(`${line('points', 'a')}.total`, 'total'),
    at(`${line('points', 'a')}.holes[0..9].value`, 'front', sum),
    at(`${line('points', 'a')}.holes[9..18].value`, 'back', sum),
    at('cards[ball=a].holes', 'holes_not_returned', pickedUp),
  ],
  'ST-02': [
    at(`${line('net', 'a')}.isNoReturn`, 'net medal', inCase('NR')),
    at(`${line('gross', 'a')}.isNoReturn`, 'gross medal', inCase('NR')),
    at(`${line('points', 'a')}.total`, 'Stableford'),
  ],
  'ST-03': [
    at(`${holeOf(line('gross', 'a'), 4)}.value`, 'hole_4'),
    at(`${holeOf(line('gross', 'a'), 16)}.value`, 'hole_16'),
    at(`${line('gross', 'a')}.total`, 'gross_total'),
    at(`${line('net', 'a')}.total`, 'net_total'),
  ],
  'ST-04': [
    at('cards[ball=a].holes[hole=10].score', 'counts'),
    at(`${holeOf(line('points', 'a'), 10)}.value`, 'points'),
  ],
  'ST-05': [at(`${holeOf(line('points', 'a'), 18)}.value`, 'Stableford.points')],
  'ST-06': [at(`${line('points', 'a')}.total`, 'points')],
  'ST-07': [
    at(`${line('bogey', 'a')}.holes[*].value`, 'won', countOf(1)),
    at(`${line('bogey', 'a')}.holes[*].value`, 'halved', countOf(0)),
    at(`${line('bogey', 'a')}.holes[*].value`, 'lost', countOf(-1)),
    at(`${line('bogey', 'a')}.total`, 'result'),
  ],
  'CB-01': [
    ...['a', 'b', 'c'].map(ball => at(`${line('points', ball)}.total`, `totals.${ball.toUpperCase()}`)),
    at(`${tie('points')}.sides`, 'order', capitals),
    // The sides of the working stand in their order after it: B, A, C.
    ...['B', 'A', 'C'].map((name, place) => at(figure('points', 'last-9', place), `last9.${name}`)),
    ...['B', 'A'].map((name, place) => at(figure('points', 'last-6', place), `last6.${name}`)),
    ...['B', 'A'].map((name, place) => at(figure('points', 'last-3', place), `last3.${name}`)),
    at(`${tie('points')}.decidedBy[0]`, 'decided.B over A', decidedBy('last-3', 'last 3')),
    at(`${tie('points')}.decidedBy[1]`, 'decided.A over C', decidedBy('last-9', 'last 9')),
  ],
  'CB-02': [
    ...['x', 'y'].map(ball => at(`${line('card', ball)}.total`, `totals.${ball.toUpperCase()}`)),
    at(`${tie('card')}.sides[0][0]`, 'winner', capital),
    ...['Y', 'X'].map((name, place) => at(figure('card', 'last-9', place), `last9_fixed.${name}`)),
    at(`${tie('play')}.sides[0][0]`, 'winner_by_play_order', capital),
    ...['X', 'Y'].map((name, place) => at(figure('play', 'last-9', place), `last9_by_play.${name}`)),
  ],
  'CB-04': [
    ...['a', 'b'].map(ball => at(`${line('points', ball)}.total`, `totals.${ball.toUpperCase()}`)),
    at(`${tie('points')}.sides[0][0]`, 'winner', capital),
    ...['B', 'A'].map((name, place) => at(figure('points', 'first-nine-last-6', place), `front_last6.${name}`)),
    at(`${tie('points')}.decidedBy[0]`, 'step', decidedBy('first-nine-last-6', 'holes 4-9')),
  ],
  'CB-05': [
    ...['last-6', 'last-3', 'last-hole'].flatMap(step =>
      ['B', 'A'].map((name, place) =>
        at(figure('points', step, place), `${step.replace('-hole', '1').replace('-', '')}.${name}`),
      ),
    ),
    at(`${tie('points')}.sides[0][0]`, 'winner', capital),
    at(`${tie('points')}.decidedBy[0]`, 'step', decidedBy('last-hole', 'last hole')),
  ],
  'CB-06': [
    ...['a', 'b'].map(ball => at(`${line('house', ball)}.total`, `totals.${ball.toUpperCase()}`)),
    at(`${tie('house')}.sides[0][0]`, 'house_winner', capital),
    at(`${tie('usual')}.sides[0][0]`, 'usual_winner', capital),
  ],
  'MP-01': [
    at(`${off('match', 'b')}.byHole`, 'B_strokes_on', withStrokes),
    at(`${match('match')}.holes[0..15].result`, 'running_A_up', running),
    at(`${match('match')}.holesPlayed`, 'ends_at_hole'),
    at(match('match'), 'result', sentence(['A', 'B'])),
  ],
  /** The same match after fourteen holes. */
  'MP-01/14-holes': [
    at(match('match'), 'dormie_after_hole', json => {
      const { isDormie, holesPlayed } = json as { isDormie: boolean; holesPlayed: number }
      return isDormie ? holesPlayed : null
    }),
  ],
  'MP-03': [
    at(`${holeOf(match('match'), 7)}.result`, 'hole_7', json => `corrected to ${winnerOf(['A', 'B'])(json)}`),
    at(match('match'), 'result', sentence(['A', 'B'])),
  ],
  'MP-04': [
    at(`${off('match', 'b')}.strokes`, 'strokes'),
    at(`${off('match', 'b')}.byHole`, 'holes', withStrokes),
    at(`${match('match')}.isFinished`, 'continues', json => json === false),
  ],
  'MP-05': [
    at(`${match('match')}.decidedBy`, 'B', json => (json === 'disqualified' ? 'disqualified from the match' : json)),
  ],
  'MP-08': [...strokesFor('difference', 'percent_of_difference'), ...strokesFor('each', 'round_each_then_difference')],
  'MP-10': [
    at(`${holeOf(match('match'), 10)}.values[0].value`, 'AB'),
    at(`${holeOf(match('match'), 10)}.values[1].value`, 'CD'),
    at(`${holeOf(match('match'), 10)}.result`, 'result', winnerOf(sides)),
  ],
  'MP-11': [
    at(`${holeOf(match('match'), 1)}.result`, 'known', json => `${winnerOf(sides)(json)} win the hole`),
    at(`${holeOf(match('match'), 2)}.result`, 'unknown', winnerOf(sides)),
  ],
  'MP-14': [
    at(`${off('sides', 'cd')}.strokes`, 'round_sides_first'),
    at(`${off('difference', 'cd')}.strokes`, 'half_of_difference'),
  ],
  'MP-15': [
    at(`${off('sides', 'ab')}.courseHandicap.unrounded`, 'AB_exact'),
    at(`${off('sides', 'cd')}.courseHandicap.unrounded`, 'CD_exact'),
    at(`${off('sides', 'cd')}.strokes`, 'round_sides_first'),
    at(`${off('difference', 'cd')}.strokes`, 'difference_then_round'),
  ],
  'MP-22': [
    at(`${match('match')}.isFinished`, 'continues', json => json === false),
    at(`${match('match')}.strokes[*].strokes`, 'strokes_unchanged', json => String(json) === '0,4,2,6'),
    at(`${holeOf(match('match'), 10)}.result`, 'hole_10', winnerOf(sides)),
    at(`${holeOf(match('match'), 11)}.result`, 'hole_11', winnerOf(sides)),
    at(`${holeOf(match('match'), 14)}.result`, 'hole_14', winnerOf(sides)),
  ],
  'FB-01': [
    at(`${holeOf(line('net', 'a,b'), 10)}.value`, 'net'),
    at(`${holeOf(line('points', 'a,b'), 10)}.value`, 'points'),
  ],
  'FB-02': [
    at(`${off('side', 'a')}.playingHandicap`, 'ph.A'),
    at(`${off('side', 'b')}.playingHandicap`, 'ph.B'),
    at(`${line('own', 'a')}.total`, 'A_total'),
    at(`${line('own', 'b')}.total`, 'B_total'),
    at(`${line('side', 'a,b')}.holes[*].value`, 'side'),
    at(`${line('side', 'a,b')}.total`, 'side_total'),
  ],
  'FB-03': [at(`${line('side', 'a,b')}.holes[0..4].value`, 'side')],
  'TM-05': ['four', 'three', 'with-20', 'with-17'].flatMap((ball, place) => {
    const game = ['four', 'three', 'ghost', 'average'][place] ?? ''
    const name = ['four', 'three_30_20_10', 'three_ghost20', 'three_avg_ghost'][place] ?? ''
    return [
      at(`${off(game, ball)}.courseHandicap.unrounded`, `${name}_exact`),
      at(`${off(game, ball)}.playingHandicap`, name === 'three_avg_ghost' ? `${name}_strokes` : name),
    ]
  }),
}
