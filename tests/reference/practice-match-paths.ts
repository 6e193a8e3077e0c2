import type { Json } from '#core/values/json.ts'
import { valueAt } from './json-path.ts'
import {
  at,
  holeOf,
  line,
  match,
  numbers,
  off,
  type PracticePath,
  part,
  pressesOf,
  running,
  sentence,
  sides,
  strokesFor,
  upOf,
  winnerOf,
  withStrokes,
} from './practice-readings.ts'

/** Matches and games of holes. */
export const practiceMatchPaths: Readonly<Record<string, readonly PracticePath[]>> = {
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
  'MP-17': [
    at(part('front'), 'front_main', upOf),
    at('games[id=nassau].parts', 'presses', pressesOf),
    at(part('back'), 'back', upOf),
    at(part('overall'), 'overall', upOf),
    // A unit won for each match won, one lost for each match lost.
    at('games[id=nassau].lines', 'A_units', json => {
      const [a = 0, b = 0] = ['a', 'b'].map(side => Number(valueAt(json, `[side=${side}].total`)))
      return a - b
    }),
  ],
  'MP-18': [
    at('games[id=sixes].holes[0..6].shares', 'points', json => (json as Json[]).map(numbers)),
    at('games[id=sixes].lines[*].total', 'totals', numbers),
  ],
  'MP-19': ['a', 'b', 'c', 'd'].map(ball => at(`${line('sixes', ball)}.total`, ball.toUpperCase())),
  'MP-20': [
    ...['a', 'b', 'c'].map(ball => at(`${line('skins', ball)}.total`, ball.toUpperCase())),
    at('games[id=skins].unclaimed', 'unclaimed'),
  ],
  'MP-22': [
    at(`${match('match')}.isFinished`, 'continues', json => json === false),
    at(`${match('match')}.strokes[*].strokes`, 'strokes_unchanged', json => String(json) === '0,4,2,6'),
    at(`${holeOf(match('match'), 10)}.result`, 'hole_10', winnerOf(sides)),
    at(`${holeOf(match('match'), 11)}.result`, 'hole_11', winnerOf(sides)),
    at(`${holeOf(match('match'), 14)}.result`, 'hole_14', winnerOf(sides)),
  ],
}
