import { readFileSync } from 'node:fs'
import type { RatedGender } from '#core/handicap/slope.ts'

/** A table of figures with where they are from and how sure they are. */
export interface Figures {
  readonly source: string
  readonly confidence: string
}

interface PlanFigures {
  readonly sources: Readonly<Record<string, string>>
  readonly tables: {
    readonly tour_strokes_to_hole_out: Figures & { readonly rows: readonly (readonly (number | null)[])[] }
    readonly golfer90_strokes_to_hole_out: Figures & { readonly rows: readonly (readonly (number | null)[])[] }
    readonly tour_putts: Figures & { readonly avg_putts: readonly number[] }
    readonly golfer90_putts: Figures & {
      readonly avg_putts: readonly number[]
      readonly make_prob: readonly number[]
    }
    readonly tour_make_prob: Figures & { readonly rows_ft_tries_made: readonly (readonly [number, number, number])[] }
    readonly E_examples: { readonly rows: readonly (readonly number[])[] }
    readonly dispersion_default: {
      readonly examples_150yd_SD: Readonly<
        Record<string, { readonly lat: number; readonly long: number; readonly q: number }>
      >
    }
    /** Means by bands of the Index, in yards. */
    readonly driver_distance_total: Figures & Readonly<Record<RatedGender, Readonly<Record<string, number>>>>
    readonly hole_score_model: {
      readonly table: readonly {
        readonly H: number
        readonly mean18_over_rating: number
        readonly P: Readonly<Record<string, number>>
      }[]
    }
    readonly env: { readonly rows: readonly Readonly<Record<string, number>>[] }
  }
  readonly worked: Readonly<Record<string, unknown>>
}

export const planFigures: PlanFigures = JSON.parse(
  readFileSync(new URL('../plan-figures.json', import.meta.url), 'utf8'),
)

/** Handicap Indexes that the worked figures are given for. */
export const workedIndexes = [0, 10, 18, 28] as const

/** The confidence of `plan-figures.json` in this program's words. */
export const confidenceOf = (text: string): string => {
  if (text.startsWith('SEEN-2nd')) return 'second-hand'
  if (text.startsWith('SEEN')) return 'published'
  if (text.startsWith('DERIVED')) return 'derived'
  return text.startsWith('MEMORY') ? 'memory' : 'own'
}
