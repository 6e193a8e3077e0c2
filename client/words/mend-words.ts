import { own, type Words } from './word.ts'

/** What was wrong from the start, put right during the round. */
export const mendWords = {
  'mend-open': own('Correct course, names or handicaps'),
  'mend-title': own('Corrections'),
  'mend-hint': own('Every game follows at once. No score moves, and each act can be undone on the card.'),
  'mend-desk': own('In an outing of several groups the desk corrects course, names and handicaps.'),
  'mend-hole-title': own('A hole'),
  'mend-hole': own('Which hole'),
  'mend-hole-of': own('On the card of'),
  'mend-hole-all': own('the course'),
  'mend-hole-save': own('Correct hole {hole}'),
  'mend-index-twin': own('Hole {hole} has stroke index {index} too. Correct that one next.'),
  'mend-player-save': own('Correct {player}'),
  'mend-tees-title': own('Tees: ratings and lengths'),
  'mend-tees-save': own('Correct the tees'),
  'history-title': own('{who} named the outing {title}'),
  'history-no-title': own('{who} took the name of the outing away'),
  'history-hole': own('{who} corrected the {hole}: par {par}, stroke index {index}'),
  'history-tee': own('{who} corrected the tee {name}'),
  'history-no-tee': own('{who} took a tee away'),
  'history-player': own('{who} corrected a name: {name}'),
  'history-handicap': own('{who} corrected {player}’s handicap: {figure}'),
  'history-no-handicap': own('{who} took {player}’s handicap away'),
  'history-playerTee': own('{who} corrected {player}’s tee: {name}'),
  'history-no-playerTee': own('{who} took {player}’s tee away'),
} as const satisfies Words
