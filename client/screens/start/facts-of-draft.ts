import { type FormatName, formatNames } from '#core/formats/format-names.ts'
import type { NewFact } from '#core/outing/acts.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import type { PlainGame, PlainHandicap, PlainOuting, PlainPlayer, PlainTee } from '#core/outing/plain-file.ts'
import { namedMethods } from '#core/outing/plain-methods.ts'
import type { BallId, GameId, GroupId, PlayerId, TeeId } from '#core/values/ids.ts'
import { say } from '../../words/say.ts'
import { type Draft, holesInPlay, type PlayerDraft, type TeeDraft } from './draft.ts'
import { waysToSide } from './sides.ts'

/** The facts of a draft without faults: one group, each player's own ball. */
export const factsOfDraft = (draft: Draft, day: string): NewFact[] => factsOfPlain(plainOfDraft(draft, day))

function plainOfDraft(draft: Draft, day: string): PlainOuting {
  const balls = draft.players.map(({ id }) => id as BallId)
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
    groups: [{ id: 'g1' as GroupId, name: say('start-group'), balls, start: draft.startHole }],
    games: formatNames.filter(format => draft.games[format].isOn).map(format => plainGame(draft, format)),
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
  const { allowance, methods, sides } = draft.games[format]
  const ways = waysToSide(format, draft.players)
  const chosen = ways[sides] ?? ways[0] ?? []
  return {
    id: format as string as GameId,
    format,
    sides: chosen as readonly (readonly BallId[])[],
    ...namedMethods({ ...methods, allowancePercent: Number(allowance) }),
  }
}
