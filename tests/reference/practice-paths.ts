import { practiceMatchPaths } from './practice-match-paths.ts'
import {
  at,
  capital,
  capitals,
  countOf,
  decidedBy,
  figure,
  holeOf,
  inCase,
  line,
  off,
  type PracticePath,
  pickedUp,
  sum,
  tie,
  withStrokes,
} from './practice-readings.ts'

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
  ...practiceMatchPaths,
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
