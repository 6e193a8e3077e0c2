import type { PlayedHole } from '#core/card/score.ts'
import { quillmoor } from './quillmoor.ts'

/**
 * What a person with a pencil makes of a game of totals, from gross scores and course handicaps. Deliberately plain, and
 * nothing of core in it.
 * Sources: Rules of Handicapping 2024, Appendix C and E; Rules of Golf 2023, rules 21.1 to 21.3, 22, 23.2 and 24.
 */

export type PencilScore = number | 'picked-up' | 'not-played' | null

export interface PencilGame {
  readonly format: string
  /** Each side's balls: the Course Handicaps of its players and its scores in order of play. */
  readonly sides: readonly (readonly {
    readonly handicaps: readonly number[]
    readonly scores: readonly PencilScore[]
  }[])[]
  readonly round: readonly PlayedHole[]
  readonly allowance: number
  readonly counting: readonly number[]
  /** Twice par, net double bogey, or a fixed number. */
  readonly cap: 'twice-par' | 'net-double-bogey' | number
}

const hundredths = (value: number): number => Math.floor((value + 50) / 100)

const shares: Readonly<Record<string, readonly number[]>> = {
  'foursomes 2': [50, 50],
  'greensomes 2': [60, 40],
  'chapman 2': [60, 40],
  'scramble 2': [35, 15],
  'scramble 3': [30, 20, 10],
  'scramble 4': [25, 20, 15, 10],
}

const isGross = (format: string): boolean => format.endsWith('-gross')

function playingHandicap({ format, allowance }: PencilGame, handicaps: readonly number[]): number {
  const [first = 0] = handicaps
  if (handicaps.length === 1) return hundredths(first * allowance)
  const list = shares[`${format.split('-')[0]} ${handicaps.length}`] ?? []
  const lowToHigh = [...handicaps].sort((a, b) => a - b)
  return hundredths(lowToHigh.reduce((sum, each, place) => sum + each * (list[place] ?? 0), 0))
}

/** One on each hole by index among those played, round and round; a plus player gives back from the highest index. */
function strokesByHole(strokes: number, round: readonly PlayedHole[]): number[] {
  const left = round.map(() => 0)
  const byIndex = [...round.keys()].sort((a, b) => indexOf(round[a]) - indexOf(round[b]))
  for (let n = 0; n < strokes; n++) {
    const at = byIndex[n % round.length] ?? 0
    left[at] = (left[at] ?? 0) + 1
  }
  for (let n = 0; n < -strokes; n++) {
    const at = byIndex[round.length - 1 - (n % round.length)] ?? 0
    left[at] = (left[at] ?? 0) - 1
  }
  return left
}

const indexOf = (hole: PlayedHole | undefined): number => quillmoor.indexes[(hole?.hole ?? 1) - 1] ?? 0
const parOf = (hole: PlayedHole | undefined): number => quillmoor.pars[(hole?.hole ?? 1) - 1] ?? 0

type Unit = 'strokes' | 'points' | 'holes'
const unitOf = (format: string): Unit => {
  if (format.endsWith('par-bogey')) return 'holes'
  return format.includes('stableford') || format === 'waltz' ? 'points' : 'strokes'
}

/** A total for each side, in the order given; null for no return. */
export const pencilTotals = (game: PencilGame): (number | null)[] =>
  game.sides.map(side => {
    const balls = side.map(({ handicaps, scores }) => ({
      scores,
      strokes: strokesByHole(playingHandicap(game, handicaps), game.round),
    }))
    let sum: number | null = 0
    for (const [place, hole] of game.round.entries()) {
      const worths = balls.map(({ scores, strokes }) =>
        worthOf(game, scores[place] ?? null, parOf(hole), strokes[place] ?? 0),
      )
      const value = holeOf(game, worths, place)
      if (value === 'no return') sum = null
      else if (value !== null && sum !== null) sum += value
    }
    return sum
  })

function worthOf(
  { format, cap }: PencilGame,
  score: PencilScore,
  par: number,
  strokes: number,
): number | 'none' | null {
  if (score === null) return null
  const received = isGross(format) ? 0 : strokes
  if (format.startsWith('maximum-score')) {
    const most = cap === 'twice-par' ? 2 * par : cap === 'net-double-bogey' ? par + 2 + strokes : cap
    return Math.min(typeof score === 'number' ? score : 99, most) - received
  }
  if (typeof score !== 'number') return 'none'
  const net = score - received
  if (unitOf(format) === 'points') return Math.max(0, par + 2 - net)
  return unitOf(format) === 'holes' ? Math.sign(par - net) : net
}

function countOf({ format, counting }: PencilGame, balls: number, place: number): number {
  if (format.startsWith('best-balls') || format === 'waltz') return counting[place % counting.length] ?? 1
  return format.startsWith('total-of-two') ? balls : 1
}

function holeOf(
  game: PencilGame,
  worths: readonly (number | 'none' | null)[],
  place: number,
): number | 'no return' | null {
  const unit = unitOf(game.format)
  const count = countOf(game, worths.length, place)
  const holed = worths.filter(each => typeof each === 'number').sort((a, b) => (unit === 'strokes' ? a - b : b - a))
  if (holed.length < count && worths.includes(null)) return null
  if (holed.length < count && unit === 'strokes') return 'no return'
  if (holed.length === 0) return unit === 'holes' ? -1 : 0
  return holed.slice(0, count).reduce((sum, each) => sum + each, 0)
}
