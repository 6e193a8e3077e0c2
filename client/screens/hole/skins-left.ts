import type { PlayedHole } from '#core/card/score.ts'
import type { Game, Group, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import { isLastHole } from './hole-view.ts'

export interface SkinsAtEnd {
  readonly game: Game
  /** How many wait after the last hole. */
  readonly skins: number
}

/** The first game of the group's own balls in which skins wait after its last hole, and that does not share them out. */
export function skinsAtEnd(outing: Outing, results: Results, group: Group, at: PlayedHole): SkinsAtEnd | null {
  if (!isLastHole(group, at)) return null
  for (const game of outing.games) {
    const result = results.games.get(game.id)
    const isOwn = game.sides?.flat().every(ball => group.balls.includes(ball)) ?? false
    if (!isOwn || result?.kind !== 'shares' || !result.isFinished || result.sharedOut > 0) continue
    const hole = result.holes.at(-1)
    if (hole?.kind === 'carried' && hole.pot !== null) return { game, skins: hole.pot }
  }
  return null
}
