import { type HoleKey, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { candidatesOf } from '../../parts/mark.ts'
import { formatHoles, formatScore } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { isAwaited } from '../hole/hole-in-play.ts'
import { isWritten } from '../hole/hole-view.ts'

/** What the card shows in a box: "5", "5 / 6" while two scores wait, empty where nothing is written. */
export function boxWords(outing: Outing, ball: BallId, key: HoleKey): string {
  const found = outing.cards.get(ball)?.scores.get(key)
  if (found?.kind === 'one') return formatScore(found.score)
  return found?.kind === 'two' ? candidatesOf(found).map(formatScore).join(' / ') : ''
}

/** Gross strokes of the holes given; null until all are holed. */
export function grossOf(outing: Outing, ball: BallId, keys: readonly HoleKey[]): number | null {
  let sum = 0
  for (const key of keys) {
    const found = outing.cards.get(ball)?.scores.get(key)
    if (found?.kind !== 'one' || typeof found.score !== 'number') return null
    sum += found.score
  }
  return sum
}

/** What still stands open on a card: the sentence, and the first hole of it. */
export interface OpenLine {
  readonly text: string
  readonly at: PlayedHole
}

/** One line a player and reason; empty when every hole that is owed has its score. */
export const openLines = (outing: Outing, group: Group): readonly OpenLine[] =>
  group.balls.flatMap(ball => {
    const player = outing.balls.get(ball)?.name ?? ball
    const awaited = group.round.filter(at => isAwaited(outing, ball, holeKey(at)))
    const two = awaited.filter(at => isWritten(outing, ball, holeKey(at)))
    const missing = awaited.filter(at => !two.includes(at))
    return [...lineOf('card-missing', player, missing), ...lineOf('card-two', player, two)]
  })

function lineOf(key: 'card-missing' | 'card-two', player: string, found: readonly PlayedHole[]): OpenLine[] {
  const [at] = found
  return at === undefined ? [] : [{ text: say(key, { player, holes: holesWords(found.map(({ hole }) => hole)) }), at }]
}

/** "hole 8", "holes 8 to 18" */
export const holesWords = (holes: readonly number[]): string =>
  holes.length === 1 ? say('card-hole', { hole: formatHoles(holes) }) : say('card-holes', { holes: formatHoles(holes) })
