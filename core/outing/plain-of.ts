import { type Card, type CardScore, recordOf, type ScoreEntry, type ScoreRecord } from '#core/card/card.ts'
import type { HoleScore, PlayedHole } from '#core/card/score.ts'
import { groupOfKey } from '#core/log/op.ts'
import { unreachable } from '#core/values/assert.ts'
import type { BallId, TeeId } from '#core/values/ids.ts'
import type { CourseHole, Handicap, Tee, TeeRatings } from './facts.ts'
import type { Game, Group, Outing, Player } from './outing.ts'
import type {
  PlainGame,
  PlainGroup,
  PlainHandicap,
  PlainOuting,
  PlainPlayer,
  PlainRatings,
  PlainScores,
  PlainTee,
} from './plain-file.ts'
import { plainGameId } from './plain-id.ts'
import { namedMethods } from './plain-methods.ts'
import { plainNotesOf, soundNotes } from './plain-notes-of.ts'
import { mostShapes } from './sketch.ts'
import { formatIndex, formatTenths } from './tenths.ts'

/**
 * The outing as a plain file; null while its course lacks a hole. A record that itself holds two scores for a hole is
 * blank there, and what is late, stray or newer, or names what is not here, is left out: the whole form has everything.
 */
export function plainOf(outing: Outing): PlainOuting | null {
  const holes = courseHoles(outing)
  if (holes === null) return null
  const file: PlainOuting = {
    sixThrees: 'outing',
    version: 1,
    form: 'plain',
    ...(outing.title === null ? {} : { title: outing.title }),
    ...(outing.day === null ? {} : { day: outing.day }),
    length: outing.length,
    rules: outing.rules,
    course: {
      ...(outing.courseName === null ? {} : { name: outing.courseName }),
      holes,
      tees: teesOf(outing),
      ...sketchesOf(outing, holes.length),
    },
    players: [...outing.players.values()].map(player => plainPlayer(outing, player)),
    balls: [...outing.balls.values()].map(({ id, players }) => ({ id, players })),
    groups: [...outing.groups.values()].map(plainGroup),
    ...movedOf(outing, holes.length),
    games: outing.games.flatMap(game => plainGame(outing, game)),
    ...(outing.namedMain === null ? {} : { main: plainGameId(outing.namedMain) }),
    scores: [...outing.cards].flatMap(([ball, card]) => scoresOf(outing, holes.length, ball, card)),
    closed: [...outing.cards].filter(([, card]) => card.isClosed).map(([ball]) => ball),
  }
  return { ...file, ...soundNotes(plainNotesOf(outing, holes.length), file) }
}

function courseHoles({ holes }: Outing): CourseHole[] | null {
  const count = holes.has(18) ? 18 : 9
  const all = Array.from({ length: count }, (_, place) => holes.get(place + 1) ?? null)
  return all.every(hole => hole !== null) && holes.size === count ? all : null
}

/** Of the holes that the course has; what this version uses of each. */
function sketchesOf(outing: Outing, last: number): Pick<PlainOuting['course'], 'sketches'> {
  const drawn = [...outing.sketches].filter(([hole]) => hole <= last).sort(([a], [b]) => a - b)
  const sketches = drawn.map(([hole, { green, shapes }]) => ({
    hole,
    ...(green === null ? {} : { green }),
    ...(shapes.size === 0 ? {} : { shapes: [...shapes.values()].slice(0, mostShapes) }),
  }))
  return sketches.length === 0 ? {} : { sketches }
}

const teesOf = (outing: Outing): PlainTee[] => [...outing.tees].map(([id, tee]) => plainTee(id, tee))

const plainTee = (id: TeeId, tee: Tee): PlainTee => ({
  id,
  name: tee.name,
  ...(tee.ratings === null ? {} : { ratings: plainRatings(tee.ratings) }),
  ...(tee.frontRatings === null ? {} : { frontRatings: plainRatings(tee.frontRatings) }),
  ...(tee.backRatings === null ? {} : { backRatings: plainRatings(tee.backRatings) }),
  ...(tee.pars === null ? {} : { pars: tee.pars }),
  ...(tee.indexes === null ? {} : { indexes: tee.indexes }),
  ...(tee.lengths === null ? {} : { lengths: tee.lengths }),
})

const plainRatings = ({ courseRatingTenths, slope, par }: TeeRatings): PlainRatings => ({
  courseRating: Number(formatTenths(courseRatingTenths)),
  slope,
  par,
})

const plainPlayer = (outing: Outing, { id, name, tee, handicap }: Player): PlainPlayer => ({
  id,
  name,
  ...(tee === null || !outing.tees.has(tee) ? {} : { tee }),
  ...(handicap === null ? {} : { handicap: plainHandicap(handicap) }),
})

function plainHandicap(handicap: Handicap): PlainHandicap {
  switch (handicap.kind) {
    case 'index': {
      const text = formatIndex(handicap.tenths)
      return { index: handicap.tenths < 0 ? text : Number(text) }
    }
    case 'course-handicap':
      return { courseHandicap: handicap.strokes }
    case 'plain-strokes':
      return { strokes: handicap.strokes }
    default:
      return unreachable(handicap)
  }
}

const plainGroup = ({ id, name, balls, round, extra }: Group): PlainGroup => ({
  id,
  name,
  balls,
  order: [...round, ...extra].map(({ hole, lap }) => [hole, lap] as const),
})

/** Moves of balls and from groups that are here; a hole that the course does not have is left out. */
function movedOf({ balls, groups }: Outing, last: number): Pick<PlainOuting, 'moved'> {
  const moved = [...balls.values()].flatMap(({ id: ball, group: own, elsewhere }) =>
    (own === null || !groups.has(own) ? [] : elsewhere).map(({ group, holes }) => ({
      ball,
      group,
      holes: holes.filter(([hole]) => hole <= last),
    })),
  )
  const known = moved.filter(({ group, holes }) => groups.has(group) && holes.length > 0)
  return known.length === 0 ? {} : { moved: known }
}

function plainGame(outing: Outing, game: Game): PlainGame[] {
  if (game.format === null || game.sides === null) return []
  const plain: PlainGame = {
    id: plainGameId(game.id),
    format: game.format,
    sides: game.sides,
    ...(game.group === null ? {} : { group: game.group }),
    ...(game.holes?.from ? { from: game.holes.from } : {}),
    ...(game.holes?.to ? { to: game.holes.to } : {}),
    ...namedMethods(game.format, {
      ...game.methods,
      drawnCard: game.methods.drawnCard && outing.balls.has(game.methods.drawnCard) ? game.methods.drawnCard : null,
    }),
  }
  return [plain]
}

interface Row {
  readonly group: string | null
  readonly record: ScoreRecord
  readonly lap: number
}

function scoresOf(outing: Outing, holes: number, ball: BallId, card: Card): PlainScores[] {
  const rows = new Map<string, Row & { holes: (HoleScore | null)[] }>()
  for (const [key, score] of card.scores) {
    const [hole = 0, lap = 0] = key.split('/').map(Number)
    if (hole > holes) continue
    for (const written of writtenOn(outing, ball, score, { hole, lap })) {
      const name = `${written.group}/${written.record}/${lap}`
      const row = rows.get(name) ?? { ...written, holes: Array<HoleScore | null>(holes).fill(null) }
      row.holes[hole - 1] = written.score
      rows.set(name, row)
    }
  }
  return [...rows.values()].map(({ group, record, lap, holes: scores }) => ({
    ball,
    ...(group === null ? {} : { group: group as NonNullable<PlainScores['group']> }),
    record,
    lap,
    holes: scores,
  }))
}

/** One score a record that counts in a file; a closed score that none of them says stands on the card, or is the desk's. */
function writtenOn(
  outing: Outing,
  ball: BallId,
  score: CardScore,
  { lap }: PlayedHole,
): (Row & { readonly score: HoleScore })[] {
  if (score.kind === 'none') return []
  const own = outing.balls.get(ball)?.group ?? null
  const isPlaced = own !== null && outing.groups.has(own)
  const byKey = new Map<string, ScoreEntry[]>()
  for (const entry of score.entries) {
    const group = groupOfKey(entry.key)
    if (group !== null && !(isPlaced && outing.groups.has(group))) continue
    byKey.set(entry.key, [...(byKey.get(entry.key) ?? []), entry])
  }
  if (score.kind === 'one' && byKey.size === 0) {
    return [{ group: isPlaced ? own : null, record: isPlaced ? 'card' : 'desk', lap, score: score.score }]
  }
  return [...byKey.values()].flatMap(entries => {
    const [first, ...rest] = entries
    if (first === undefined || rest.some(entry => entry.value !== first.value)) return []
    return [{ group: groupOfKey(first.key), record: recordOf(first), lap, score: first.value }]
  })
}
