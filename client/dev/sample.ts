import { emptyLog, foldOps } from '#core/log/fold.ts'
import type { Fact, Op } from '#core/log/op.ts'
import { scoreFact } from '#core/outing/acts.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { type Levels, levelsOf } from '#core/outing/levels.ts'
import type { Outing } from '#core/outing/outing.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import type { Results } from '#core/outing/results.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { bagOf } from '#core/plan/bag.ts'
import type { Club } from '#core/plan/clubs.ts'
import type { Plan } from '#core/plan/plan.ts'
import { planOf } from '#core/plan/plan-of.ts'
import type { BallId, DeviceId, GameId, GroupId, LogId, PlayerId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import { isKnownPlayerValue } from '#shared/player-facts.ts'

const pars = [4, 5, 3, 4, 4, 3, 4, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5, 4]
const indexes = [7, 3, 15, 11, 1, 17, 5, 13, 9, 8, 4, 16, 12, 2, 10, 18, 6, 14]
const players = [
  ['Alder', 14, [5, 6, 3, 6, 5, 9, 4, 6]],
  ['Birch', 7, [4, 5, 3, 5, 6, 'picked-up', 4, 5]],
  ['Cedar', 21, [6, 7, 4, 5, 6, 5, 5]],
  ['Rowan', 11, [4, 6, 3, 6, 5, 3, 5]],
] as const
const id = (name: string): string => name.toLowerCase()
const pairs = [
  ['Alder', 'Cedar'],
  ['Birch', 'Rowan'],
].map(side => side.map(name => id(name) as BallId))

/** Four players on the 8th at the invented course: a match, points, two scores for Rowan, the 4th out of play. */
const plain: PlainOuting = {
  sixThrees: 'outing',
  version: 1,
  form: 'plain',
  length: 18,
  course: { name: 'Quillmoor', holes: pars.map((par, place) => ({ par, index: indexes[place] ?? 1 })) },
  players: players.map(([name, courseHandicap]) => ({ id: id(name) as PlayerId, name, handicap: { courseHandicap } })),
  groups: [{ id: 'four' as GroupId, name: 'Group 4', balls: players.map(([name]) => id(name) as BallId) }],
  games: [
    { id: 'match' as GameId, format: 'four-ball-match', sides: pairs },
    { id: 'points' as GameId, format: 'stableford', sides: players.map(([name]) => [id(name) as BallId]) },
  ],
  holesOut: [{ hole: 4, counts: 'nothing' }],
  scores: players.map(([name, , holes]) => ({ ball: id(name) as BallId, holes: [...holes] })),
}

const op = (device: string, facts: readonly Fact[]): Op => ({
  log: 'sample' as LogId,
  scope: null,
  device: device as DeviceId,
  n: 1,
  tick: 1,
  at: 0,
  act: 'sample',
  facts,
})

/** Two phones that have not heard of each other. */
const eighthOfRowan = (score: number): Fact => ({
  ...scoreFact({ group: 'four' as GroupId, ball: 'rowan' as BallId, hole: 8, lap: 1, record: 'card', score }),
  replaces: [],
})

export interface Sample {
  readonly outing: Outing
  readonly levels: Levels
  readonly results: Results
}

export function sample(): Sample {
  const start = op(
    'desk',
    factsOfPlain(plain).map(fact => ({ ...fact, replaces: [] })),
  )
  const state = foldOps(emptyLog, [start, op('one', [eighthOfRowan(5)]), op('other', [eighthOfRowan(6)])])
  const outing = outingOf(state, isKnownValue)
  return { outing, levels: levelsOf(outing), results: resultsOf(outing) }
}

/** A bag of which three clubs have a number, in yards, with every habit on. */
export function samplePlan(): Plan {
  const said = new Map<Club, number | null>([
    ['driver', 215],
    ['hybrid-4', null],
    ['iron-7', 145],
    ['sand-wedge', 85],
  ])
  return { ...planOf(emptyLog, isKnownPlayerValue), said, bag: bagOf(said), favourite: 100 }
}
