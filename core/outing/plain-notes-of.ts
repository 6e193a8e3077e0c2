import type { HoleKey } from '#core/card/score.ts'
import { unreachable } from '#core/values/assert.ts'
import type { BallId, GameId, RulingId } from '#core/values/ids.ts'
import type { HoleAndLap, Ruling } from './facts.ts'
import { gamesNamed } from './games-of.ts'
import type { GameNotes } from './notes.ts'
import type { Outing } from './outing.ts'
import { namesIn } from './plain-fault.ts'
import type { PlainOuting } from './plain-file.ts'
import { plainGameId } from './plain-id.ts'
import { faultsOfNotes } from './plain-note-faults.ts'
import type {
  EveryPlainNote,
  PlainAbsence,
  PlainByHole,
  PlainCertified,
  PlainConcession,
  PlainNotes,
  PlainRuling,
} from './plain-notes.ts'

/** What an outing says beside field, games and scores, as a plain file has it, every list in it. */
export function plainNotesOf(outing: Outing, holes = 18): EveryPlainNote {
  const { notes } = outing
  const games = [...notes.ofGames].map(([id, said]) => [plainGameId(id), said] as const)
  const { playingConditions: conditions } = notes
  return {
    concessions: games.flatMap(([game, said]) => concessionsOf(game, said)),
    agreedHoles: games.flatMap(([game, { agreedHoles }]) =>
      agreedHoles.map(({ group, hole, between, won }) => ({ game, group, ...holeOf(hole), between, won })),
    ),
    agreedResults: games.flatMap(([game, { agreedResults }]) =>
      agreedResults.map(({ group, between, won, by, left }) => ({ game, group, between, won, by, left })),
    ),
    presses: games.flatMap(([game, { presses }]) => presses.map(({ by, from }) => ({ game, by, ...holeOf(from) }))),
    holesOut: [...notes.holesOut].map(([key, { counts, reason }]) => ({
      ...holeOf(key),
      counts,
      ...named({ reason }),
    })),
    drives: byHoleRows(notes.drives, holes),
    teeShots: [...notes.teeShots].flatMap(([ball, byHole]) =>
      [...byHole].map(([key, player]) => ({ ball, player, ...holeOf(key) })),
    ),
    likelyScores: byHoleRows(notes.likelyScores, holes),
    absences: [...notes.absences.values()].map(
      ({ ball, joinedAt, leftAt, isWithdrawn, reason }): PlainAbsence => ({
        ball,
        ...named({ joinedAt: joinedAt && pairOf(joinedAt), leftAt: leftAt && pairOf(leftAt) }),
        withdrawn: isWithdrawn,
        ...named({ reason }),
      }),
    ),
    markers: [...notes.markers].map(([ball, marker]) => ({ ball, marker })),
    certified: [...notes.certified].flatMap(([ball, { byPlayer, byMarker }]): PlainCertified[] => [
      ...(byPlayer === null ? [] : [{ ball, by: 'player', scores: byPlayer } as const]),
      ...(byMarker === null ? [] : [{ ball, by: 'marker', scores: byMarker } as const]),
    ]),
    rulings: notes.rulings.map(({ id, ruling }) => plainRuling(id, namedAsInFile(outing, ruling))),
    ...(conditions === null
      ? {}
      : { playingConditions: { strokes: conditions.strokes, ...named({ reason: conditions.reason }) } }),
  }
}

/** The notes of a file but for the rows that name what the file does not have. */
export function soundNotes(notes: PlainNotes, file: PlainOuting): PlainNotes {
  const faulty = new Set(faultsOfNotes({ ...file, ...notes }, namesIn(file)).map(({ path }) => path.split('.')[0]))
  const isSound = (name: string) => (_: unknown, place: number) => !faulty.has(`${name}[${place}]`)
  return Object.fromEntries(
    Object.entries(notes).map(([name, rows]) => [name, Array.isArray(rows) ? rows.filter(isSound(name)) : rows]),
  )
}

/** The fields that hold something. */
const named = <T extends object>(fields: T): { readonly [K in keyof T]?: NonNullable<T[K]> } =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null)) as {
    [K in keyof T]?: NonNullable<T[K]>
  }

const pairOf = (key: HoleKey): HoleAndLap => {
  const [hole = 0, lap = 0] = key.split('/').map(Number)
  return [hole, lap]
}

const holeOf = (key: HoleKey): { readonly hole: number; readonly lap: number } => {
  const [hole, lap] = pairOf(key)
  return { hole, lap }
}

const concessionsOf = (game: GameId, said: GameNotes): PlainConcession[] => [
  ...said.strokeConcessions.map(
    ({ ball, hole, score }) => ({ what: 'stroke', game, ball, ...holeOf(hole), score }) as const,
  ),
  ...said.holeConcessions.map(
    ({ by, to, hole }) => ({ what: 'hole', game, by, ...named({ to }), ...holeOf(hole) }) as const,
  ),
  ...said.matchConcessions.map(({ by, to }) => ({ what: 'match', game, by, ...named({ to }) }) as const),
]

/** One row a ball and lap; a hole that the course does not have is left out. */
function byHoleRows<T>(byBall: ReadonlyMap<BallId, ReadonlyMap<HoleKey, T>>, holes: number): PlainByHole<T>[] {
  const rows: (PlainByHole<T> & { readonly holes: (T | null)[] })[] = []
  for (const [ball, byHole] of byBall) {
    for (const [key, value] of byHole) {
      const { hole, lap } = holeOf(key)
      if (hole > holes) continue
      const row = rows.find(each => each.ball === ball && each.lap === lap)
      const full = row ?? { ball, lap, holes: Array<T | null>(holes).fill(null) }
      full.holes[hole - 1] = value
      if (row === undefined) rows.push(full)
    }
  }
  return rows
}

function plainRuling(id: RulingId, ruling: Ruling): PlainRuling {
  const said = { id, ...named({ games: ruling.games, rule: ruling.rule, reason: ruling.reason }) }
  switch (ruling.kind) {
    case 'no-penalty':
      return { ...said, kind: ruling.kind, ...named({ ball: ruling.ball }) }
    case 'penalty': {
      const { kind, ball, hole, strokes, holeLost } = ruling
      return { ...said, kind, ball, ...ruledHole(hole), strokes, holeLost }
    }
    case 'disqualified':
      return { ...said, kind: ruling.kind, ball: ruling.ball, ...ruledHole(ruling.hole) }
    case 'plays-off':
    case 'net-off':
      return { ...said, kind: ruling.kind, ball: ruling.ball, strokes: ruling.strokes }
    default:
      return unreachable(ruling)
  }
}

/** A game that shares its id with another's has a name of its own in a file. */
const namedAsInFile = ({ games }: Outing, ruling: Ruling): Ruling => ({
  ...ruling,
  games:
    ruling.games?.flatMap(id => {
      const meant = gamesNamed(games, id)
      return meant.length === 0 ? [id] : meant.map(plainGameId)
    }) ?? null,
})

const ruledHole = (at: HoleAndLap | null): { readonly hole?: number; readonly lap?: number } =>
  at === null ? {} : { hole: at[0], lap: at[1] }
