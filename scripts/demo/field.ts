import type { PlainOuting } from '#core/outing/plain-file.ts'

/** An invented course and four invented players. */
const pars = [4, 5, 3, 4, 4, 3, 4, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5, 4]
const indexes = [7, 3, 15, 11, 1, 17, 5, 13, 9, 8, 4, 16, 12, 2, 10, 18, 6, 14]
const yards = [378, 492, 162, 356, 421, 148, 395, 486, 352, 388, 404, 171, 501, 433, 347, 139, 478, 369]

export interface DemoPlayer {
  readonly name: string
  readonly courseHandicap: number
  /** By hole from 1; 0 is a ball picked up. */
  readonly strokes: readonly number[]
}

export const demoPlayers: readonly DemoPlayer[] = [
  { name: 'Alder', courseHandicap: 14, strokes: [5, 6, 4, 5, 6, 3, 4, 6, 5, 5, 5, 3, 6, 6, 4, 4, 6, 5] },
  { name: 'Birch', courseHandicap: 7, strokes: [4, 5, 3, 5, 5, 4, 4, 5, 4, 5, 4, 3, 6, 4, 5, 3, 5, 4] },
  { name: 'Cedar', courseHandicap: 21, strokes: [6, 7, 4, 5, 6, 5, 5, 0, 6, 5, 6, 4, 7, 5, 5, 4, 7, 6] },
  { name: 'Rowan', courseHandicap: 11, strokes: [4, 6, 3, 6, 5, 3, 5, 6, 4, 4, 5, 4, 5, 5, 4, 3, 6, 5] },
]

const idOf = (name: string): string => name.toLowerCase()
const ids = demoPlayers.map(({ name }) => idOf(name))

/** The outing before its first score: a four-ball match with Stableford and skins alongside. */
export const demoOuting = {
  sixThrees: 'outing',
  version: 1,
  form: 'plain',
  title: 'Quillmoor, four phones',
  length: 18,
  rules: false,
  course: {
    name: 'Quillmoor',
    holes: pars.map((par, place) => ({ par, index: indexes[place] ?? 1 })),
    tees: [{ id: 'white', name: 'White', lengths: { unit: 'yards', byHole: yards } }],
  },
  players: demoPlayers.map(({ name, courseHandicap }) => ({
    id: idOf(name),
    name,
    tee: 'white',
    handicap: { courseHandicap },
  })),
  groups: [{ id: 'four', name: 'First group', balls: ids }],
  games: [
    { id: 'points', format: 'stableford', sides: ids.map(id => [id]) },
    { id: 'match', format: 'four-ball-match', sides: [[ids[0], ids[2]].map(String), [ids[1], ids[3]].map(String)] },
  ],
  main: 'points',
} as unknown as PlainOuting
