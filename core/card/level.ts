import type { Card } from './card.ts'
import { type HoleKey, type HoleScore, holeKey, type PlayedHole } from './score.ts'
import { scoresOn } from './settle-card.ts'
import { threesOf } from './threes.ts'

/** Three holes in order of play. */
export interface Three {
  readonly number: number
  readonly holes: readonly HoleKey[]
  readonly par: number
  /** Par plus strokes received in the main game. */
  readonly level: number
  /** Strokes over level of the holes that count so far, a pick-up as two over; null before the first. */
  readonly overLevel: number | null
  /** Every hole is settled. */
  readonly isClosed: boolean
}

/** Over level in strokes: a pick-up counts two over; null for a hole not played, which counts nowhere. */
export function overLevelOf(score: HoleScore, level: number): number | null {
  if (score === 'picked-up') return 2
  return score === 'not-played' ? null : score - level
}

/** A card's threes against its levels. A hole whose par or level nobody knows, or with two scores, adds nothing. */
export function threesAgainstLevel(
  round: readonly PlayedHole[],
  card: Card,
  pars: ReadonlyMap<HoleKey, number>,
  levels: ReadonlyMap<HoleKey, number>,
): Three[] {
  return threesOf(round).map((played, index) => {
    const holes = played.map(holeKey)
    return {
      number: index + 1,
      holes,
      par: sumOf(holes.map(key => pars.get(key) ?? 0)),
      level: sumOf(holes.map(key => levels.get(key) ?? 0)),
      overLevel: overLevelOfHoles(holes, card, levels),
      isClosed: holes.every(key => scoresOn(card, key).length === 1),
    }
  })
}

function overLevelOfHoles(holes: readonly HoleKey[], card: Card, levels: ReadonlyMap<HoleKey, number>): number | null {
  const counted: number[] = []
  for (const key of holes) {
    const [score, ...others] = scoresOn(card, key)
    const level = levels.get(key)
    if (score === undefined || others.length > 0 || level === undefined) continue
    const over = overLevelOf(score, level)
    if (over !== null) counted.push(over)
  }
  return counted.length === 0 ? null : sumOf(counted)
}

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0)
