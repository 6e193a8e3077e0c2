/** Whether a game's strokes are the ball's own or, as in a match, the difference from the lowest. */
export type StrokesGiven = 'own' | 'difference'

/** Every contest, the way in which the sides' values make a result, with the strokes that it gives. */
export const contestStrokes = {
  total: 'own',
  match: 'difference',
  'match-of-each-pair': 'difference',
  skins: 'own',
  'nine-points': 'difference',
  'split-sixes': 'difference',
  nassau: 'difference',
  sixes: 'difference',
  'six-threes': 'difference',
} as const satisfies Readonly<Record<string, StrokesGiven>>

export type ContestName = keyof typeof contestStrokes
