import type { BallId } from '#core/values/ids.ts'
import type { Game, Outing } from './outing.ts'
import { ballsOfPlain, type PlainGame, type PlainOuting, type PlainScores } from './plain-file.ts'
import { plainGameId } from './plain-id.ts'
import type { EveryPlainNote, PlainNotes, PlainRuling } from './plain-notes.ts'
import { plainNotesOf, soundNotes } from './plain-notes-of.ts'
import { plainOf } from './plain-of.ts'
import type { Results } from './results.ts'

/**
 * One ball's card as a plain file of its own, for its player to keep: course and tee, its players and their handicaps,
 * its scores and what was ruled about it, and the games that its own strokes alone decide. Nobody else's name or score
 * stands in it, and nothing that lets anybody in. Null while the course lacks a hole or the ball is in no group.
 */
export function ownCardOf(outing: Outing, results: Results, ball: BallId): PlainOuting | null {
  const whole = plainOf(outing)
  if (whole === null) return null
  const balls = ballsOfPlain(whole).filter(({ id }) => id === ball)
  const players = whole.players.filter(({ id }) => balls.some(each => each.players.includes(id)))
  const scores = (whole.scores ?? []).filter(row => row.ball === ball)
  const moved = (whole.moved ?? []).filter(each => each.ball === ball)
  const games = ownGames(outing, results, ball, whole.games ?? [])
  const groups = ownGroups(whole, ball, scores)
  if (players.length === 0 || !groups.some(group => group.balls.includes(ball))) return null
  const tees = (whole.course.tees ?? []).filter(({ id }) => players.some(({ tee }) => tee === id))
  const { sketches: _, ...course } = whole.course
  const file: PlainOuting = {
    ...headOf(whole),
    course: { ...course, tees },
    players,
    balls,
    groups,
    ...(moved.length === 0 ? {} : { moved }),
    games,
    ...(games.some(({ id }) => id === whole.main) ? { main: whole.main } : {}),
    scores,
    closed: (whole.closed ?? []).filter(id => id === ball),
  }
  const notes = ownNotes(plainNotesOf(outing, whole.course.holes.length), ball, games)
  return { ...file, ...soundNotes(notes, file) }
}

type Head = 'sixThrees' | 'version' | 'form' | 'title' | 'day' | 'length' | 'rules'

const headOf = ({ sixThrees, version, form, title, day, length, rules }: PlainOuting): Pick<PlainOuting, Head> => ({
  sixThrees,
  version,
  form,
  ...(title === undefined ? {} : { title }),
  ...(day === undefined ? {} : { day }),
  length,
  rules,
})

/** The groups that speak for the ball: its own, and those that played and wrote holes of it. */
function ownGroups(
  { groups, moved }: PlainOuting,
  ball: BallId,
  scores: readonly PlainScores[],
): PlainOuting['groups'] {
  const names = new Set([
    ...scores.map(({ group }) => group),
    ...(moved ?? []).filter(each => each.ball === ball).map(({ group }) => group),
  ])
  return groups
    .filter(({ id, balls }) => balls.includes(ball) || names.has(id))
    .map(group => ({ ...group, balls: group.balls.filter(id => id === ball) }))
}

/** The games in which the ball is a side of its own and counts a total: what others scored changes nothing in them. */
function ownGames(outing: Outing, results: Results, ball: BallId, games: readonly PlainGame[]): PlainGame[] {
  const own = new Set(outing.games.filter(game => isOwn(results, game, ball)).map(({ id }) => plainGameId(id)))
  return games.filter(({ id }) => own.has(id)).map(game => ({ ...game, sides: [[ball]] }))
}

function isOwn(results: Results, { id, sides }: Game, ball: BallId): boolean {
  const result = results.games.get(id)
  if (result?.kind !== 'total') return false
  // Strokes that lie in a difference to the others' tees cannot be told without them.
  const isFree = (result.strokes.get(ball)?.forTeePar ?? 0) === 0
  return isFree && (sides ?? []).some(side => side.length === 1 && side[0] === ball)
}

function ownNotes(notes: EveryPlainNote, ball: BallId, games: readonly PlainGame[]): PlainNotes {
  const isOwnRow = (row: { readonly ball?: BallId | undefined }): boolean => row.ball === ball
  return {
    holesOut: notes.holesOut,
    drives: notes.drives.filter(isOwnRow),
    teeShots: notes.teeShots.filter(isOwnRow),
    likelyScores: notes.likelyScores.filter(isOwnRow),
    absences: notes.absences.filter(isOwnRow),
    certified: notes.certified.filter(isOwnRow),
    rulings: notes.rulings.filter(isOwnRow).flatMap(ruling => ofGames(ruling, games)),
    ...(notes.playingConditions === undefined ? {} : { playingConditions: notes.playingConditions }),
  }
}

/** A ruling for the games that are left; none where it was for others alone. */
function ofGames(ruling: PlainRuling, games: readonly PlainGame[]): PlainRuling[] {
  if (ruling.games === undefined) return [ruling]
  const left = ruling.games.filter(id => games.some(game => game.id === id))
  return left.length === 0 ? [] : [{ ...ruling, games: left }]
}
