/** An invented course and four invented players, for tests and examples. */

export const quillmoor = {
  name: 'Quillmoor',
  yards: [378, 492, 162, 356, 421, 148, 395, 486, 352, 388, 404, 171, 501, 433, 347, 139, 478, 369],
  indexes: [7, 3, 15, 11, 1, 17, 5, 13, 9, 8, 4, 16, 12, 2, 10, 18, 6, 14],
  pars: [4, 5, 3, 4, 4, 3, 4, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5, 4],
} as const

export interface TestPlayer {
  readonly name: string
  /** Read off the board at the first tee. */
  readonly courseHandicap: number
  /** Strokes taken, by hole from 1. */
  readonly strokes: readonly number[]
}

export const fourPlayers: readonly TestPlayer[] = [
  { name: 'Alder', courseHandicap: 14, strokes: [5, 6, 4, 5, 6, 3, 4, 6, 5, 5, 5, 3, 6, 6, 4, 4, 6, 5] },
  { name: 'Birch', courseHandicap: 7, strokes: [4, 5, 3, 5, 5, 4, 4, 5, 4, 5, 4, 3, 6, 4, 5, 3, 5, 4] },
  { name: 'Cedar', courseHandicap: 21, strokes: [6, 7, 4, 5, 6, 5, 5, 7, 6, 5, 6, 4, 7, 5, 5, 4, 7, 6] },
  { name: 'Rowan', courseHandicap: 11, strokes: [4, 6, 3, 6, 5, 3, 5, 6, 4, 4, 5, 4, 5, 5, 4, 3, 6, 5] },
]
