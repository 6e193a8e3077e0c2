import type { HabitFigures } from '#core/plan/advice/habit-figures.ts'
import { say } from './say-any.ts'

/** What a habit is called where it is held against another way. */
export interface Ways {
  readonly habit: string
  readonly other: string
}

/** An answer about a habit: in a few words, and then the figures and what they rest on. */
export interface FiguresText {
  readonly answer: string
  readonly lines: readonly string[]
}

export function textOfFigures(figures: HabitFigures, ways: Ways): FiguresText {
  const { verdict, restsOn } = figures
  const way = figures.habitIsBetter ? ways.habit : ways.other
  return {
    answer: say(`figures-${verdict}`, { way }),
    lines: [figureLine(figures, way), ...(restsOn === null ? [] : [say(`figures-rests-${restsOn}`)])],
  }
}

/** What the better way saves, told from its own side. */
function figureLine({ perTenShots, least, most, verdict }: HabitFigures, way: string): string {
  const n = tenths(Math.abs(perTenShots))
  switch (verdict) {
    case 'no-difference':
      return n === tenths(0) ? say('figures-none') : say('figures-says-nothing', { way, n })
    case 'too-close':
      return say('figures-turns', { way, n })
    case 'slightly':
    case 'clearly': {
      const [from = n, to = n] = [least, most]
        .map(Math.abs)
        .sort((a, b) => a - b)
        .map(tenths)
      return from === to ? say('figures-saves-alike', { n }) : say('figures-saves', { n, least: from, most: to })
    }
  }
}

/** Strokes to a tenth: the tables say no more. */
export const tenths = (strokes: number): string => strokes.toFixed(1)
