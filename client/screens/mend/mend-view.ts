import type { NewFact } from '#core/outing/acts.ts'
import { mendHandicapFacts, mendNameFacts, mendPlayersTeeFacts } from '#core/outing/acts-mend.ts'
import { handicapOfPlain } from '#core/outing/facts-of-plain.ts'
import type { Outing, Player } from '#core/outing/outing.ts'
import type { PlayerId, TeeId } from '#core/values/ids.ts'
import type { FieldFault } from '../games/game-faults.ts'
import { courseOfOuting, withCourse } from '../start/course-of.ts'
import { type Draft, emptyDraft, type PlayerDraft } from '../start/draft.ts'
import { faultsOfPlayer } from '../start/draft-faults.ts'
import { plainHandicap } from '../start/facts-of-draft.ts'
import { figureOf } from '../start/figure-of.ts'

/** One act that mends something: its line in the history and its facts. */
export interface Mending {
  readonly act: string
  readonly facts: readonly NewFact[]
}

export const playerDraftOf = ({ id, name, handicap, tee }: Player): PlayerDraft => ({
  id,
  name,
  tee: tee ?? '',
  ...figureOf(handicap),
})

/** The running outing in the fields of the start page, as far as they are mended one by one. */
export function draftToMend(outing: Outing): Draft {
  const course = courseOfOuting(outing)
  const empty = { ...emptyDraft, length: outing.length }
  const onCourse = course === null ? empty : withCourse(empty, course, '')
  return { ...onCourse, players: [...outing.players.values()].map(playerDraftOf) }
}

/** What keeps a player's fields from being mended; a handicap that nobody had may stay away. */
export function faultsOfMending(draft: Draft, player: PlayerDraft): readonly FieldFault[] {
  const place = draft.players.findIndex(({ id }) => id === player.id)
  const players = draft.players.map(each => (each.id === player.id ? player : each))
  const isTwin = players.some(({ id, name }) => id !== player.id && name.trim() === player.name.trim())
  const hadNone = draft.players[place]?.figure === ''
  const found = faultsOfPlayer({ ...draft, players }, player, place, isTwin)
  return hadNone && player.figure === '' ? found.filter(({ field }) => field !== `${player.id}-figure`) : found
}

/** One act for each of name, handicap and tee that differs; none of them touches a score. */
export function mendingsOf(before: PlayerDraft, after: PlayerDraft): readonly Mending[] {
  const player = before.id as PlayerId
  const mendings: Mending[] = []
  if (before.name !== after.name.trim()) {
    mendings.push({ act: 'name mended', facts: mendNameFacts(player, after.name.trim()) })
  }
  if (before.tee !== after.tee) {
    const tee = after.tee === '' ? null : (after.tee as TeeId)
    mendings.push({ act: 'tee of a player mended', facts: mendPlayersTeeFacts(player, tee) })
  }
  if (before.kind !== after.kind || before.figure !== after.figure.trim()) {
    const figure = after.figure.trim()
    const handicap = figure === '' ? null : handicapOfPlain(plainHandicap(after.kind, figure))
    mendings.push({ act: 'handicap mended', facts: mendHandicapFacts(player, handicap) })
  }
  return mendings
}
