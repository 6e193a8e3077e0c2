import type { FormatName } from '#core/formats/format-names.ts'
import type { NewFact } from '#core/outing/acts.ts'
import { groupsThrown } from '#core/outing/draw/group-sizes.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import type {
  PlainGame,
  PlainGroup,
  PlainHandicap,
  PlainOuting,
  PlainPlayer,
  PlainTee,
} from '#core/outing/plain-file.ts'
import { namedMethods } from '#core/outing/plain-methods.ts'
import type { BallId, GameId, GroupId, PlayerId, TeeId } from '#core/values/ids.ts'
import { say } from '../../words/say-any.ts'
import { sidesOfDraft } from '../games/game-acts.ts'
import { methodsOfDraft } from '../games/game-draft.ts'
import { type Draft, holesInPlay, type PlayerDraft, type TeeDraft } from './draft.ts'
import { ballsOfDraft, gamesChosen, namesOf } from './draft-balls.ts'
import { hasRatings, lengthsOf } from './tee-draft.ts'

/** The balls in the order in which they were thrown. */
export type Throw = <T>(balls: readonly T[]) => readonly T[]

const asListed: Throw = balls => balls

/**
 * The facts of a draft without faults, with a ball for each player or for partners: up to four balls are one group, more are
 * thrown for groups.
 */
export const factsOfDraft = (draft: Draft, day: string, thrown: Throw = asListed): NewFact[] =>
  factsOfPlain(plainOfDraft(draft, day, thrown))

function plainOfDraft(draft: Draft, day: string, thrown: Throw): PlainOuting {
  const balls = ballsOfDraft(draft).map(ball => ({ id: ball.id as BallId, players: ball.players as PlayerId[] }))
  const name = draft.courseName.trim()
  return {
    sixThrees: 'outing',
    version: 1,
    form: 'plain',
    title: draft.title.trim() || name,
    day,
    length: draft.length,
    rules: draft.isUnderRules,
    course: {
      name,
      holes: holesInPlay(draft).map(({ par, index }) => ({ par, index: Number(index) })),
      tees: draft.tees.map(tee => plainTee(tee, draft.length)),
      sketches: draft.sketches?.filter(({ hole }) => hole <= draft.length),
    },
    players: draft.players.map(player => plainPlayer(player, draft)),
    balls,
    groups: groupsOf(
      balls.map(({ id }) => id),
      draft.startHole,
      thrown,
    ),
    games: gamesChosen(draft).map(format => plainGame(draft, format)),
  }
}

function groupsOf(balls: readonly BallId[], start: number, thrown: Throw): PlainGroup[] {
  if (balls.length <= 4) return [{ id: 'g1' as GroupId, name: say('start-group'), balls, start }]
  return groupsThrown(thrown(balls)).map((group, place) => ({
    id: `g${place + 1}` as GroupId,
    name: say('group-n', { n: place + 1 }),
    balls: group,
    start,
  }))
}

/** A tee without faults as a plain file has it. */
export function plainTee(tee: TeeDraft, length: 9 | 18): PlainTee {
  const { kept } = tee
  const lengths = lengthsOf(tee, length)
  const typed = hasRatings(tee)
    ? { courseRating: Number(tee.courseRating), slope: Number(tee.slope), par: Number(tee.par) }
    : undefined
  const plain = {
    id: tee.id as TeeId,
    name: tee.name.trim(),
    ratings: length === 18 ? typed : kept?.ratings,
    frontRatings: length === 9 ? typed : kept?.frontRatings,
    backRatings: kept?.backRatings,
    pars: kept?.pars?.slice(0, length),
    indexes: kept?.indexes?.slice(0, length),
    lengths,
  }
  return Object.fromEntries(Object.entries(plain).filter(([, value]) => value !== undefined)) as unknown as PlainTee
}

function plainPlayer(player: PlayerDraft, { tees }: Draft): PlainPlayer {
  const named = { id: player.id as PlayerId, name: player.name.trim() }
  const figure = player.figure.trim()
  const tee = tees.some(({ id }) => id === player.tee) ? { tee: player.tee as TeeId } : {}
  return figure === '' ? { ...named, ...tee } : { ...named, ...tee, handicap: plainHandicap(player.kind, figure) }
}

/** A figure without faults as a plain file has it. */
export function plainHandicap(kind: PlayerDraft['kind'], figure: string): PlainHandicap {
  if (kind === 'index') return { index: figure }
  // A plus handicap is written with its plus and held as a negative number.
  const strokes = figure.startsWith('+') ? -Number(figure) : Number(figure)
  return kind === 'course-handicap' ? { courseHandicap: strokes } : { strokes }
}

function plainGame(draft: Draft, format: FormatName): PlainGame {
  const game = draft.games[format]
  const chosen = sidesOfDraft(format, game, namesOf(draft, ballsOfDraft(draft)))
  return {
    id: format as string as GameId,
    format,
    sides: chosen as readonly (readonly BallId[])[],
    ...namedMethods(format, methodsOfDraft(game)),
  }
}
