import { autumnDay } from '../kit/plain-outing.ts'

/** The four at Quillmoor with their scores up to a hole; on the 5th Cedar picked up, on the 7th Birch took nine. */
export const dayUpTo = (hole: number): object => ({
  ...autumnDay,
  rules: false,
  scores: autumnDay.scores.map(({ ball, holes }) => ({
    ball,
    holes: holes.map((score, place) => (place < hole ? oddScore(ball, place + 1, score) : null)),
  })),
})

function oddScore(ball: string, hole: number, score: number): number | 'picked-up' {
  if (ball === 'cedar' && hole === 5) return 'picked-up'
  return ball === 'birch' && hole === 7 ? 9 : score
}

const trees = ['Alder', 'Birch', 'Cedar', 'Elm', 'Fir', 'Hazel', 'Juniper', 'Larch', 'Maple', 'Oak', 'Rowan', 'Spindle']
const idOf = (name: string): string => name.toLowerCase()

/** Twelve in three groups, on the 1st to the 6th, one Stableford across. */
export const rollUp = {
  ...autumnDay,
  title: 'Saturday roll-up',
  players: trees.map((name, place) => ({
    id: idOf(name),
    name,
    tee: 'white',
    handicap: { courseHandicap: (place * 7) % 29 },
  })),
  groups: [0, 1, 2].map(at => ({
    id: `g${at}`,
    name: `Group ${at + 1}`,
    balls: trees.slice(at * 4, at * 4 + 4).map(idOf),
  })),
  games: [{ id: 'points', format: 'stableford', sides: trees.map(name => [idOf(name)]) }],
  scores: trees.map((name, place) => ({
    ball: idOf(name),
    holes: autumnDay.course.holes.map(({ par }, at) =>
      at < 6 - Math.floor(place / 4) ? par + ((name.length + at * 2 + place) % 4) - 1 + (place % 2) : null,
    ),
  })),
}
