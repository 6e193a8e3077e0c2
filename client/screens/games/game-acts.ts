import type { FormatName } from '#core/formats/format-names.ts'
import type { SkinsLeftMethod } from '#core/formats/skins-methods.ts'
import { withdrawn } from '#core/log/op.ts'
import { gameFacts, type NewFact, type NewGame } from '#core/outing/acts.ts'
import type { Game } from '#core/outing/outing.ts'
import type { BallId, GameId, GroupId } from '#core/values/ids.ts'
import { type GameDraft, methodsOfDraft } from './game-draft.ts'
import { type Named, type Sides, waysToSide } from './sides.ts'

/** A game of the outing under the id that its facts carry: two groups may give their own games the same one. */
export function asWritten(game: Game): NewGame | null {
  const { id, group, format, sides, methods } = game
  if (format === null) return null
  const own = group !== null && id.startsWith(`${group}/`) ? id.slice(group.length + 1) : id
  return { id: own as GameId, group, format, sides: sides ?? [], methods }
}

export interface GameToWrite {
  readonly id: GameId
  readonly group: GroupId | null
  readonly format: FormatName
  readonly draft: GameDraft
  readonly balls: readonly Named[]
}

/** The game that a draft without faults makes. */
export const gameOfDraft = ({ id, group, format, draft, balls }: GameToWrite): NewGame => ({
  id,
  group,
  format,
  sides: sidesOfDraft(format, draft, balls) as readonly (readonly BallId[])[],
  methods: methodsOfDraft(draft),
})

/** The sides chosen while all of their balls are there, else the first way that the balls give. */
export function sidesOfDraft(format: FormatName, draft: GameDraft, balls: readonly Named[]): Sides {
  return sidesInHand(format, draft, balls).filter(side => side.length > 0)
}

/** The same with the sides that nobody is on yet. */
export function sidesInHand(format: FormatName, { sidesChosen }: GameDraft, balls: readonly Named[]): Sides {
  const isThere = sidesChosen?.flat().every(id => balls.some(ball => ball.id === id)) ?? false
  return (isThere ? sidesChosen : waysToSide(format, balls)[0]) ?? []
}

/** Only what differs is written, so that two people may change two settings of a game at once. */
export function changedFacts(before: NewGame, after: NewGame): NewFact[] {
  const stood = new Map(gameFacts(before).map(({ key, value }) => [key, value]))
  const wanted = new Map(gameFacts(after).map(({ key, value }) => [key, value]))
  return [...new Set([...stood.keys(), ...wanted.keys()])].flatMap(key => {
    const value = wanted.get(key) ?? withdrawn
    return JSON.stringify(stood.get(key)) === JSON.stringify(value) ? [] : [{ key, value }]
  })
}

/** Takes every fact of a game away; its scores are nobody's alone and stay. */
export const takeAwayFacts = (game: NewGame): NewFact[] => gameFacts(game).map(({ key }) => ({ key, value: withdrawn }))

/** What becomes of the skins of a game that are left after the last hole; empty where it is so already. */
export function skinsLeftFacts(game: Game, skinsLeft: SkinsLeftMethod): NewFact[] {
  const written = asWritten(game)
  return written === null ? [] : changedFacts(written, { ...written, methods: { ...written.methods, skinsLeft } })
}
