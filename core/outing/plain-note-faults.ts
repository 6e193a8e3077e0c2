import type { BallId, GameId, GroupId } from '#core/values/ids.ts'
import type { HoleAndLap } from './facts.ts'
import { groupOfAgreed } from './facts-of-notes.ts'
import type { Names, PlainFault } from './plain-fault.ts'
import { ballsOfPlain, groupOfBall, type PlainOuting } from './plain-file.ts'
import type { PlainAgreedHole, PlainAgreedResult, PlainByHole, PlainConcession, PlainRuling } from './plain-notes.ts'

type Code = PlainFault['code']

/** What a row is held against. */
interface Checked {
  readonly file: PlainOuting
  readonly known: Names
}

/** What is wrong in one row: field and code. */
type RowFaults = readonly (readonly [field: string, code: Code] | null)[]

/** What a file says beside field, games and scores, and cannot mean. */
export function faultsOfNotes(file: PlainOuting, known: Names): PlainFault[] {
  const at = { file, known }
  return [
    ...faultsOfRows('concessions', file.concessions, each => ofConcession(at, each), nameOfConcession),
    ...faultsOfRows(
      'agreedHoles',
      file.agreedHoles,
      each => [...ofAgreed(at, each), ofHole(at, each.hole)],
      each => [each.game, groupOfAgreed(file, each), each.hole, each.lap ?? 1, ...pairOf(each)],
    ),
    ...faultsOfRows(
      'agreedResults',
      file.agreedResults,
      each => ofAgreed(at, each),
      each => [each.game, groupOfAgreed(file, each), ...pairOf(each)],
    ),
    ...faultsOfRows(
      'presses',
      file.presses,
      ({ game, by, hole, lap = 1 }) => [...ofSaidBy(at, 'by', by, game, [hole, lap]), ofHole(at, hole)],
      ({ game, by, hole, lap = 1 }) => [game, groupOfBall(file, by, [hole, lap]), hole, lap],
    ),
    ...faultsOfRows(
      'holesOut',
      file.holesOut,
      ({ hole }) => [ofHole(at, hole)],
      ({ hole, lap = 1 }) => [hole, lap],
    ),
    ...faultsOfRows('drives', file.drives, each => [...ofByHole(at, each), ...ofDrives(at, each)], nameOfByHole),
    ...faultsOfRows(
      'teeShots',
      file.teeShots,
      ({ ball, player, hole, lap = 1 }) => [
        ofBall(at, 'ball', ball, [hole, lap]),
        ofHole(at, hole),
        playersOf(file, ball).includes(player) ? null : (['player', 'unknown player'] as const),
      ],
      ({ ball, hole, lap = 1 }) => [ball, hole, lap],
    ),
    ...faultsOfRows('likelyScores', file.likelyScores, each => ofByHole(at, each), nameOfByHole),
    ...faultsOfRows(
      'absences',
      file.absences,
      each => [
        ofBall(at, 'ball', each.ball),
        ofPair(at, 'joinedAt[0]', each.joinedAt),
        ofPair(at, 'leftAt[0]', each.leftAt),
      ],
      ({ ball }) => [ball],
    ),
    ...faultsOfRows(
      'markers',
      file.markers,
      ({ ball, marker }) => [
        ofBall(at, 'ball', ball),
        known.players.has(marker) ? null : (['marker', 'unknown player'] as const),
      ],
      ({ ball }) => [ball],
    ),
    ...faultsOfRows(
      'certified',
      file.certified,
      ({ ball, scores }) => [
        ofBall(at, 'ball', ball),
        ...(scores ?? []).map((score, place) => ofPair(at, `scores[${place}][0]`, [score[0], score[1]])),
      ],
      ({ ball, by }) => [ball, by],
    ),
    ...faultsOfRows('rulings', file.rulings, each => ofRuling(at, each), null),
  ]
}

/** Faults of each row, and of one that says again what another says under the same name. */
function faultsOfRows<T>(
  list: string,
  rows: readonly T[] | undefined,
  faultsOf: (row: T) => RowFaults,
  nameOf: ((row: T) => readonly unknown[]) | null,
): PlainFault[] {
  const names = new Set<string>()
  return (rows ?? []).flatMap((row, place) => {
    const path = `${list}[${place}]`
    const faults = faultsOf(row).flatMap(fault =>
      fault === null ? [] : [{ path: `${path}.${fault[0]}`, code: fault[1] }],
    )
    const name = nameOf === null ? String(place) : nameOf(row).join('/')
    if (names.has(name)) faults.push({ path, code: 'said twice' })
    names.add(name)
    return faults
  })
}

const nameOfConcession = (said: PlainConcession): readonly unknown[] => {
  const by = said.what === 'stroke' ? said.ball : said.by
  return [said.what, said.game, by, ...(said.what === 'match' ? [] : [said.hole, said.lap ?? 1])]
}

const nameOfByHole = ({ ball, lap = 1 }: PlainByHole<unknown>): readonly unknown[] => [ball, lap]

const pairOf = ({ between }: PlainAgreedHole | PlainAgreedResult): readonly BallId[] => [...between].sort()

function ofConcession(at: Checked, said: PlainConcession): RowFaults {
  const field = said.what === 'stroke' ? 'ball' : 'by'
  const by = said.what === 'stroke' ? said.ball : said.by
  const to = said.what === 'stroke' ? undefined : said.to
  return [
    ...ofSaidBy(at, field, by, said.game, said.what === 'match' ? undefined : [said.hole, said.lap ?? 1]),
    to === undefined ? null : ofBallIn(at, 'to', to, said.game),
    said.what === 'match' ? null : ofHole(at, said.hole),
  ]
}

/** What the group of a ball says of a game. */
const ofSaidBy = (at: Checked, field: string, ball: BallId, game: GameId, hole?: HoleAndLap): RowFaults => [
  ofGame(at, game, groupOfBall(at.file, ball, hole)),
  ofBall(at, field, ball) ?? ofBallIn(at, field, ball, game),
]

function ofAgreed(at: Checked, said: PlainAgreedHole | PlainAgreedResult): RowFaults {
  const [one, other] = said.between
  const group = groupOfAgreed(at.file, said)
  return [
    ofGame(at, said.game, group),
    ofBallIn(at, 'between[0]', one, said.game),
    ofBallIn(at, 'between[1]', other, said.game),
    one === other ? ['between[1]', 'said twice'] : null,
    said.won === null || said.won === one || said.won === other ? null : ['won', 'not between these'],
    ofSpeaker(at, said),
  ]
}

/** A group speaks for matches of its own balls alone. */
function ofSpeaker({ file, known }: Checked, said: PlainAgreedHole | PlainAgreedResult): RowFaults[number] {
  const { group, between } = said
  const at: HoleAndLap | undefined = 'hole' in said ? [said.hole, said.lap ?? 1] : undefined
  const groups = between.map(ball => groupOfBall(file, ball, at))
  if (group === undefined) return groups.every(each => each === null) ? ['between[0]', 'no group'] : null
  if (!known.groups.has(group)) return ['group', 'unknown group']
  return groups.includes(group) ? null : ['group', 'other group']
}

/** A game that a group can mean. */
function ofGame({ file, known }: Checked, game: GameId, speaker: GroupId | null): RowFaults[number] {
  if (!known.games.has(game)) return ['game', 'unknown game']
  const group = file.games?.find(({ id }) => id === game)?.group
  return group === undefined || group === speaker ? null : ['game', 'other group']
}

function ofBallIn({ file, known }: Checked, field: string, ball: BallId, game: GameId): RowFaults[number] {
  if (!known.balls.has(ball)) return [field, 'unknown ball']
  const sides = file.games?.find(({ id }) => id === game)?.sides
  return sides === undefined || sides.flat().includes(ball) ? null : [field, 'not in the game']
}

/** A ball that a group speaks for. */
function ofBall({ file, known }: Checked, field: string, ball: BallId, at?: HoleAndLap): RowFaults[number] {
  if (!known.balls.has(ball)) return [field, 'unknown ball']
  return groupOfBall(file, ball, at) === null ? [field, 'no group'] : null
}

const playersOf = (file: PlainOuting, ball: BallId): readonly string[] =>
  ballsOfPlain(file).find(({ id }) => id === ball)?.players ?? []

const ofHole = ({ file }: Checked, hole: number | undefined): RowFaults[number] =>
  hole === undefined || hole <= file.course.holes.length ? null : ['hole', 'no such hole']

const ofPair = ({ file }: Checked, field: string, at: HoleAndLap | undefined): RowFaults[number] =>
  at === undefined || at[0] <= file.course.holes.length ? null : [field, 'no such hole']

const ofByHole = (at: Checked, { ball, holes }: PlainByHole<unknown>): RowFaults => [
  ofBall(at, 'ball', ball),
  holes.length === at.file.course.holes.length ? null : ['holes', 'wrong number of holes'],
]

function ofDrives({ file }: Checked, { ball, holes }: PlainByHole<string>): RowFaults {
  const players = playersOf(file, ball)
  return holes.map((player, place) =>
    player === null || players.includes(player) ? null : [`holes[${place}]`, 'unknown player'],
  )
}

function ofRuling({ file, known }: Checked, ruling: PlainRuling): RowFaults {
  const { ball } = ruling
  const hole = ruling.kind === 'penalty' || ruling.kind === 'disqualified' ? ruling.hole : undefined
  return [
    ...(ruling.games ?? []).map((game, place) =>
      known.games.has(game) ? null : ([`games[${place}]`, 'unknown game'] as const),
    ),
    ball === undefined || known.balls.has(ball) ? null : (['ball', 'unknown ball'] as const),
    ofHole({ file, known }, hole),
  ]
}
