import { bestAim } from '#core/plan/aim/best-aim.ts'
import { eachPlace, type Judged, penaltyShare } from '#core/plan/aim/judged.ts'
import type { Stroke } from '#core/plan/aim/surface.ts'
import {
  type Assumptions,
  type Difference,
  differenceOf,
  spreadScales,
  usualAssumptions,
} from '#core/plan/assumptions.ts'
import { clubForYd, type GolferClub, longestCarryYd } from '#core/plan/golfer.ts'
import { bestLayUp, type LayUpShot, layUpSweep } from './lay-up-sweep.ts'
import { type Situation, strokeWith } from './situation.ts'

/** Whether to go for a green. */
export type GoOrLayUp =
  /** No club of the bag carries it: going is never advised. */
  | { readonly kind: 'not-reachable'; readonly longestYd: number; readonly layUp: LayUpShot | null }
  | {
      readonly kind: 'reachable'
      readonly club: GolferClub
      readonly go: Judged
      readonly layUp: LayUpShot | null
      /** What going costs more than laying up; below 0 it saves. Null without a lay-up. */
      readonly cost: Difference | null
      /** How often going must stay dry to be worth it; null where nothing is wet or where there is nothing to weigh. */
      readonly breakEven: number | null
      readonly dryShare: number
    }

/** How often a shot must stay dry for going to equal laying up. Of expected strokes with this one among them. */
export const breakEvenShare = (wet: number, dry: number, layUp: number): number => (wet - layUp) / (wet - dry)

/** The means over the dry and the wet ends of a stroke, this one among them. */
export function dryAndWet(stroke: Stroke, aim: Judged['aim']): { readonly dry: number; readonly wet: number | null } {
  const sums = { dry: 0, wet: 0, dryShare: 0, wetShare: 0 }
  eachPlace(stroke, aim, (outcome, share, x, y) => {
    const value = share * stroke.ground.valueAt(outcome, x, y)
    if (outcome === 'water') {
      sums.wet += value
      sums.wetShare += share
    } else if (outcome !== 'out-of-bounds') {
      sums.dry += value
      sums.dryShare += share
    }
  })
  return {
    dry: 1 + sums.dry / (sums.dryShare || 1),
    wet: sums.wetShare === 0 ? null : 1 + sums.wet / sums.wetShare,
  }
}

export function goOrLayUp(at: Situation): GoOrLayUp {
  const layUp = bestLayUp(layUpSweep(at, usualAssumptions))
  const club = clubForYd(at.golfer, at.lie, at.distanceYd, 1)
  if (club === null) return { kind: 'not-reachable', longestYd: longestCarryYd(at.golfer, at.lie), layUp }
  const stroke = strokeWith(at, club, at.distanceYd, usualAssumptions)
  const go = bestAim(stroke, at.sketch, at.pin).best
  const { dry, wet } = dryAndWet(stroke, go.aim)
  return {
    kind: 'reachable',
    club,
    go,
    layUp,
    cost: layUp && costOf(at, club, go, layUp),
    breakEven: wet === null || layUp === null ? null : breakEvenShare(wet, dry, layUp.expected),
    dryShare: 1 - penaltyShare(go.shares),
  }
}

function costOf(at: Situation, club: GolferClub, go: Judged, layUp: LayUpShot): Difference {
  const varied = spreadScales.map(spreadScale => {
    const assumed: Assumptions = { ...usualAssumptions, spreadScale }
    const going = bestAim(strokeWith(at, club, at.distanceYd, assumed), at.sketch, at.pin).best.expected
    return going - (bestLayUp(layUpSweep(at, assumed))?.expected ?? going)
  })
  return differenceOf(go.expected - layUp.expected, varied)
}
