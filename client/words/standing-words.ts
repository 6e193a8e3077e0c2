import { own, trade, type Words } from './word.ts'

/** How the games stand on a hole. */
export const standingWords = {
  'pick-up-from': own('May pick up after: {list}'),
  'pick-up-each': own('{player} {n}'),
  'side-points': own('{side} {n}'),
  'skins-here': own('{n} skins on this hole'),
  'level-end': own('Level after the last hole'),
  'level-end-ask': own('{match}: level after the last hole. Is it halved, or do you play on?'),
  'skins-end': own('Skins left after the last hole'),
  'skins-end-ask': own(
    '{game}: {n} left after the last hole, and nobody has won them. Share them out, or play on for them?',
  ),
  'skins-end-share': own('Share out'),
  'level-end-halved': trade('Halved'),
  'level-end-on': own('Play on: hole {hole}'),
  'match-strip': own('Match line, {state}: {holes}'),
  'match-won': own('hole {hole} to {side}'),
  'match-halved': own('hole {hole} halved'),
  'match-two': own('hole {hole} two scores'),
  'match-none': own('no hole decided'),
} as const satisfies Words
