import type { FormatName } from '#core/formats/format-names.ts'
import type { NewFact } from '#core/outing/acts.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import type { PlainGame, PlainHandicap, PlainOuting, PlainPlayer, PlainTee } from '#core/outing/plain-file.ts'
import { namedMethods } from '#core/outing/plain-methods.ts'
import type { BallId, GameId, GroupId, PlayerId, TeeId } from '#core/values/ids.ts'
import { say } from '../../words/say.ts'
import { methodsOfDraft } from '../games/game-draft.ts'
import { waysToSide } from '../games/sides.ts'
import { type Draft, holesInPlay, type PlayerDraft, type TeeDraft } from './draft.ts'
import { ballsOfDraft, gamesChosen } from './draft-balls.ts'

/** The facts of a draft without faults: one group, with a ball for each player or for partners. */
export const factsOfDraft = (draft: Draft, day: string): NewFact[] => factsOfPlain(plainOfDraft(draft, day))

function plainOfDraft(draft: Draft, day: string): PlainOuting {
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
    },
    players: draft.players.map(plainPlayer),
    balls,
    groups: [
      { id: 'g1' as GroupId, name: say('start-group'), balls: balls.map(({ id }) => id), start: draft.startHole },
    ],
    games: gamesChosen(draft).map(format => plainGame(draft, format)),
  }
}

function plainTee(tee: TeeDraft, length: 9 | 18): PlainTee {
  const ratings = { courseRating: Number(tee.courseRating), slope: Number(tee.slope), par: Number(tee.par) }
  const named = { id: tee.id as TeeId, name: tee.name.trim() }
  return length === 9 ? { ...named, frontRatings: ratings } : { ...named, ratings }
}

function plainPlayer(player: PlayerDraft): PlainPlayer {
  const named = { id: player.id as PlayerId, name: player.name.trim() }
  const figure = player.figure.trim()
  const tee = player.kind === 'index' && player.tee !== '' ? { tee: player.tee as TeeId } : {}
  return figure === '' ? { ...named, ...tee } : { ...named, ...tee, handicap: plainHandicap(player.kind, figure) }
}

function plainHandicap(kind: PlayerDraft['kind'], figure: string): PlainHandicap {
  if (kind === 'index') return { index: figure }
  // A plus handicap is written with its plus and held as a negative number.
  const strokes = figure.startsWith('+') ? -Number(figure) : Number(figure)
  return kind === 'course-handicap' ? { courseHandicap: strokes } : { strokes }
}

function plainGame(draft: Draft, format: FormatName): PlainGame {
  const game = draft.games[format]
  const ways = waysToSide(format, ballsOfDraft(draft))
  const chosen = ways[game.sides] ?? ways[0] ?? []
  return {
    id: format as string as GameId,
    format,
    sides: chosen as readonly (readonly BallId[])[],
    ...namedMethods(format, methodsOfDraft(game)),
  }
}
