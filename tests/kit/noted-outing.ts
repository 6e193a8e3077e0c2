import type { PlainOuting } from '#core/outing/plain-file.ts'
import { autumnDay, plainWith } from './plain-outing.ts'

const [group] = autumnDay.groups
const blank = Array<null>(18).fill(null)
const at = <T>(hole: number, value: T): (T | null)[] => blank.map((_, place) => (place === hole - 1 ? value : null))

/** One or more of everything that can be said beside scores, in two groups with a foursomes ball. */
export const notes = {
  concessions: [
    { what: 'stroke', game: 'match', ball: 'cedar', hole: 4, score: 5 },
    { what: 'hole', game: 'match', by: 'birch', to: 'alder', hole: 5 },
    { what: 'hole', game: 'match', by: 'birch', hole: 6 },
    { what: 'match', game: 'match', by: 'birch' },
  ],
  agreedHoles: [
    { game: 'match', hole: 7, between: ['alder', 'birch'], won: 'alder' },
    { game: 'match', hole: 8, between: ['alder', 'birch'], won: null },
  ],
  agreedResults: [{ game: 'match', between: ['alder', 'birch'], won: 'birch', by: 3, left: 2 }],
  presses: [{ game: 'match', by: 'alder', hole: 3 }],
  holesOut: [
    { hole: 11, counts: 'net-par', reason: 'The green is under water.' },
    { hole: 12, counts: 'nothing' },
  ],
  drives: [{ ball: 'pair', holes: at(1, 'hazel') }],
  teeShots: [
    { ball: 'pair', player: 'hazel', hole: 1 },
    { ball: 'pair', player: 'hazel', hole: 12 },
  ],
  likelyScores: [{ ball: 'cedar', holes: at(18, 7) }],
  absences: [
    { ball: 'rowan', joinedAt: [2, 1], leftAt: [16, 1], reason: 'Called home.' },
    { ball: 'pair', withdrawn: true },
  ],
  markers: [{ ball: 'alder', marker: 'birch' }],
  certified: [
    { ball: 'alder', by: 'player' },
    { ball: 'alder', by: 'marker', scores: [[1, 1, 5]] },
  ],
  rulings: [
    { id: 'first', kind: 'no-penalty', rule: 'Rules of Golf 8.1d' },
    { id: 'second', kind: 'penalty', ball: 'birch', hole: 9, strokes: 2, holeLost: true, games: ['match'] },
    { id: 'third', kind: 'penalty', ball: 'birch', strokes: 2, reason: 'Late on the tee.' },
    { id: 'fourth', kind: 'disqualified', ball: 'rowan', games: ['points'] },
    { id: 'fifth', kind: 'disqualified', ball: 'cedar', hole: 2 },
    { id: 'sixth', kind: 'plays-off', ball: 'alder', strokes: 12, games: ['match'] },
    { id: 'seventh', kind: 'net-off', ball: 'birch', strokes: 9, games: ['points'] },
  ],
  playingConditions: { strokes: 1, reason: 'A gale.' },
} as const

export const notedDay = {
  players: [...autumnDay.players, { id: 'hazel', name: 'Hazel' }, { id: 'maple', name: 'Maple' }],
  balls: [...autumnDay.players.map(({ id }) => ({ id, players: [id] })), { id: 'pair', players: ['hazel', 'maple'] }],
  groups: [group, { id: 'two', name: 'Group 5', balls: ['pair'] }],
  ...notes,
}

export const plainNotedDay: PlainOuting = plainWith(notedDay)
