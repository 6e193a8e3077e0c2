import { quillmoor, type TestPlayer } from './quillmoor.ts'

/**
 * What a person with a pencil works out from gross scores: Stableford at 95 %, four-ball match at 90 % of each course
 * handicap from the lowest. Deliberately plain, and nothing of core in it.
 * Sources: Rules of Handicapping 2024, Appendix C and E; Rules of Golf 2023, rules 21.1 and 23.2.
 */

/** Gross scores by name, by hole from 1; null where none is written. */
export type PencilCard = Readonly<Record<string, readonly (number | null)[]>>

const halfUp = (value: number): number => Math.floor(value + 0.5)

const strokesOn = (hole: number, strokes: number): number =>
  Math.floor(strokes / 18) + ((quillmoor.indexes[hole] ?? 0) <= strokes % 18 ? 1 : 0)

export function pencilPoints(player: TestPlayer, gross: readonly (number | null)[]): number {
  const handicap = halfUp((player.courseHandicap * 95) / 100)
  return gross.reduce<number>((sum, score, hole) => {
    if (score === null) return sum
    const net = score - strokesOn(hole, handicap)
    return sum + Math.max(0, 2 + (quillmoor.pars[hole] ?? 0) - net)
  }, 0)
}

export interface PencilMatch {
  /** The side that is ahead, by its place. */
  readonly ahead: 0 | 1 | null
  /** "2 up", "3 & 2", "halved" or "all square". */
  readonly text: string
  readonly isWon: boolean
}

export function pencilMatch(
  players: readonly TestPlayer[],
  sides: readonly [readonly string[], readonly string[]],
  card: PencilCard,
): PencilMatch {
  const playing = new Map(players.map(({ name, courseHandicap }) => [name, halfUp((courseHandicap * 90) / 100)]))
  const lowest = Math.min(...playing.values())
  let [up, played] = [0, 0]
  for (let hole = 0; hole < 18 && Math.abs(up) <= 18 - played; hole++) {
    const best = sides.map(side =>
      Math.min(...side.map(name => netOn(card[name]?.[hole] ?? null, hole, (playing.get(name) ?? 0) - lowest))),
    ) as [number, number]
    if (!Number.isFinite(best[0]) || !Number.isFinite(best[1])) continue
    played++
    up += Math.sign(best[1] - best[0])
  }
  const toPlay = 18 - played
  const lead = Math.abs(up)
  if (lead === 0) return { ahead: null, isWon: false, text: toPlay === 0 ? 'halved' : 'all square' }
  const isWon = lead > toPlay
  return { ahead: up > 0 ? 0 : 1, isWon, text: isWon && toPlay > 0 ? `${lead} & ${toPlay}` : `${lead} up` }
}

const netOn = (gross: number | null, hole: number, strokes: number): number =>
  gross === null ? Number.POSITIVE_INFINITY : gross - strokesOn(hole, strokes)
