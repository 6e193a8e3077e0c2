import { type HoleKey, holeKey } from '#core/card/score.ts'
import type { BallId, GameId, GroupId } from '#core/values/ids.ts'
import type { AgreedBetween, KeyParts } from './facts.ts'
import { emptyGameNotes, type GameNotes } from './notes.ts'
import type { Ball, Game } from './outing.ts'
import type { FactRow, Reading, RowKind } from './reading.ts'
import { isSpeaker } from './speaker.ts'

/** Concessions, agreed results and presses, each under the game that its group means. */
export function gameNotesOf(
  reading: Reading,
  balls: ReadonlyMap<BallId, Ball>,
  games: readonly Game[],
): Map<GameId, GameNotes> {
  const notes = new Map<GameId, GameNotes>()
  const isIn = (ball: BallId, parts: KeyParts): boolean => isSpeaker(balls, ball, parts)
  const saidBy = <T extends AgreedBetween>(parts: KeyParts, results: readonly T[]) =>
    results
      .filter(({ between }) => between.some(ball => isIn(ball, parts)))
      .map(result => ({ ...result, group: parts.group as GroupId }))
  const add = <K extends keyof GameNotes>(parts: KeyParts, list: K, entries: GameNotes[K]): void => {
    const game = gameMeant(games, parts)
    if (game === null || entries.length === 0) return
    const before = notes.get(game) ?? emptyGameNotes
    notes.set(game, { ...before, [list]: [...before[list], ...entries] })
  }
  const each = <K extends RowKind>(kind: K, read: (row: FactRow<K>, at: HoleKey, ball: BallId) => void): void => {
    for (const row of reading.rows(kind)) {
      const { hole, lap, ball } = row.parts
      if (ball === null || isIn(ball, row.parts)) read(row, holeKey({ hole: hole ?? 0, lap: lap ?? 0 }), ball as BallId)
    }
  }
  each('concededStroke', ({ parts, value }, hole, ball) =>
    add(parts, 'strokeConcessions', [{ ball, hole, score: value }]),
  )
  each('concededHole', ({ parts, value }, hole, by) => add(parts, 'holeConcessions', [{ by, to: value.to, hole }]))
  each('concededMatch', ({ parts, value }, _, by) => add(parts, 'matchConcessions', [{ by, to: value.to }]))
  each('agreedHole', ({ parts, value }, hole) => {
    const said = saidBy(parts, value.results)
    add(
      parts,
      'agreedHoles',
      said.map(result => ({ ...result, hole })),
    )
  })
  each('agreedResult', ({ parts, value }) => add(parts, 'agreedResults', saidBy(parts, value.results)))
  each('press', ({ parts, value }, from) =>
    add(parts, 'presses', isIn(value.by, parts) ? [{ by: value.by, from }] : []),
  )
  return notes
}

/** The game that a group means by an id: its own, else the outing's. */
function gameMeant(games: readonly Game[], { game, group }: KeyParts): GameId | null {
  const own = games.find(each => each.group === group && (each.id === game || each.id === `${group}/${game}`))
  return (own ?? games.find(each => each.group === null && each.id === game))?.id ?? null
}
