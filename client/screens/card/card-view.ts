import { type HoleKey, holeKey } from '#core/card/score.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { candidatesOf } from '../../parts/mark.ts'
import { formatHoles, formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'

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

/** What still stands open on the cards of a group, one sentence each; empty when every hole is settled. */
export function openWords(outing: Outing, group: Group): readonly string[] {
  return group.balls.flatMap(ball => {
    const player = outing.balls.get(ball)?.name ?? ball
    const kinds = group.round.map(at => ({
      hole: at.hole,
      kind: outing.cards.get(ball)?.scores.get(holeKey(at))?.kind ?? 'none',
    }))
    const missing = kinds.filter(({ kind }) => kind === 'none').map(({ hole }) => hole)
    const two = kinds.filter(({ kind }) => kind === 'two').map(({ hole }) => hole)
    return [
      ...(missing.length > 0 ? [say('card-missing', { player, holes: holesWords(missing) })] : []),
      ...(two.length > 0 ? [say('card-two', { player, holes: holesWords(two) })] : []),
    ]
  })
}

const holesWords = (holes: readonly number[]): string =>
  holes.length === 1 ? say('card-hole', { hole: formatHoles(holes) }) : say('card-holes', { holes: formatHoles(holes) })
