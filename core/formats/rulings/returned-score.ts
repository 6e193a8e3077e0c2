import { type HoleScoreRuling, type LowScoreReason, ruleOnHoleScore } from '#core/card/rulings/hole-score.ts'
import { cappedGross, type MaximumScore, maximumForHole } from '#core/formats/maximum-score.ts'
import { parBogey } from '#core/formats/par-bogey.ts'
import { stablefordPoints } from '#core/formats/stableford-points.ts'
import { unreachable } from '#core/values/assert.ts'

/** A form of stroke play that is run from the card. */
export type CardForm =
  | { readonly kind: 'stroke-play' }
  | { readonly kind: 'stableford' }
  | { readonly kind: 'par-bogey' }
  | { readonly kind: 'maximum-score'; readonly maximum: MaximumScore }

/** A hole of a returned card held against what was made. */
export interface ReturnedHole {
  readonly par: number
  /** Received on the hole in this competition. */
  readonly strokes: number
  /** Gross; null for a hole left blank. */
  readonly returned: number | null
  readonly actual: number
  readonly reason: LowScoreReason
  readonly isBeforeClose: boolean
}

export type ReturnedHoleRuling = HoleScoreRuling | { readonly code: 'no-return' }

/**
 * A hole score returned wrong, in each form that is run from the card: too high stands; too low disqualifies, in Stableford,
 * par/bogey and maximum score only where it changes what the hole counts; a blank is no return in stroke play and counts
 * nothing, a lost hole or the cap elsewhere.
 * Source: Rules of Golf, rules 3.3b(3), 21.1b, 21.2b and 21.3b with their exceptions; R&A and USGA; 2019 and 2023. The
 * exception was read for par/bogey; for Stableford and maximum score it is from memory.
 */
export function ruleOnReturnedHole(form: CardForm, hole: ReturnedHole): ReturnedHoleRuling {
  const { returned, actual } = hole
  if (form.kind === 'stroke-play') return ruleOnHoleScore(hole)
  if (returned === null) return { code: 'no-return' }
  const isSame = countOf(form, hole, returned) === countOf(form, hole, actual)
  return isSame && returned < actual ? { code: 'stands', score: returned } : ruleOnHoleScore(hole)
}

/** What a gross score counts in the form's own unit. */
function countOf(
  form: Exclude<CardForm, { kind: 'stroke-play' }>,
  { par, strokes }: ReturnedHole,
  gross: number,
): number {
  switch (form.kind) {
    case 'stableford':
      return stablefordPoints(par, strokes, gross)
    case 'par-bogey':
      return parBogey(par, strokes, gross)
    case 'maximum-score':
      return cappedGross(gross, maximumForHole(form.maximum, par, strokes))
    default:
      return unreachable(form)
  }
}
