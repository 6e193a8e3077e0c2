import type { PlayedHole } from '#core/card/score.ts'
import type { MatchLine } from '#core/formats/game-result.ts'
import type { Group } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import type { GameId } from '#core/values/ids.ts'
import { isLastHole } from './hole-view.ts'

export interface LevelMatch {
  readonly game: GameId
  readonly match: MatchLine
}

/** The first match of the group's own that its last hole leaves level and that nobody has agreed on. */
export function levelAtEnd(results: Results, group: Group, at: PlayedHole): LevelMatch | null {
  if (!isLastHole(group, at)) return null
  for (const [game, result] of results.games) {
    const match = result.kind === 'match' ? result.matches.find(each => isLevel(each, group)) : undefined
    if (match) return { game, match }
  }
  return null
}

function isLevel({ sides, state, decidedBy }: MatchLine, { balls }: Group): boolean {
  if (!sides.flat().every(ball => balls.includes(ball)) || decidedBy === 'agreed') return false
  const { toPlay, lead, result } = state
  return toPlay === 0 && lead === 0 && (result === null || result.kind === 'halved')
}
