import { type Outcome, outcomes } from '#core/plan/aim/ground.ts'
import { eachPlace } from '#core/plan/aim/judged.ts'
import type { Place } from '#core/plan/aim/sketch.ts'
import type { Stroke } from '#core/plan/aim/surface.ts'

/** One of ten shots as a short stroke on a cross-section of the hole. */
export interface ShortStroke {
  /** Right of the line of play. */
  readonly rightYd: number
  readonly outcome: Outcome
}

/** A spread as ten short strokes from left to right, and how many of ten end in what. */
export interface TenStrokes {
  readonly strokes: readonly ShortStroke[]
  readonly counts: Readonly<Record<Outcome, number>>
}

const ten = 10

/**
 * The picture of a stroke with an aim. The counts are the shares in tenths, the largest remainders first, so that they add
 * to ten; the strokes of each outcome stand where that outcome's shots fall, at even steps of their share. No chance in it.
 */
export function tenStrokes(stroke: Stroke, aim: Place): TenStrokes {
  const falls = new Map(outcomes.map(outcome => [outcome, new Map<number, number>()]))
  eachPlace(stroke, aim, (outcome, share, x) => {
    const columns = falls.get(outcome)
    columns?.set(x, (columns.get(x) ?? 0) + share)
  })
  const shareOf = (outcome: Outcome): number =>
    [...(falls.get(outcome)?.values() ?? [])].reduce((sum, each) => sum + each, 0)
  const counts = tenths(Object.fromEntries(outcomes.map(each => [each, shareOf(each)])) as Record<Outcome, number>)
  const strokes = outcomes.flatMap(outcome =>
    placesAt(falls.get(outcome) ?? new Map(), counts[outcome]).map(rightYd => ({ rightYd, outcome })),
  )
  return { strokes: strokes.sort((a, b) => a.rightYd - b.rightYd), counts }
}

/** Tenths that add to ten: whole ones, then the largest remainders, the earlier outcome first. */
export function tenths(shares: Readonly<Record<Outcome, number>>): Record<Outcome, number> {
  const counts = Object.fromEntries(outcomes.map(each => [each, Math.floor(shares[each] * ten)])) as Record<
    Outcome,
    number
  >
  const left = ten - outcomes.reduce((sum, each) => sum + counts[each], 0)
  const remainder = (each: Outcome): number => shares[each] * ten - Math.floor(shares[each] * ten)
  const byRemainder = [...outcomes].sort((a, b) => remainder(b) - remainder(a))
  for (const each of byRemainder.slice(0, left)) counts[each]++
  return counts
}

/** `count` places below which even steps of the share lie. */
function placesAt(columns: ReadonlyMap<number, number>, count: number): number[] {
  const falls = [...columns].sort(([one], [other]) => one - other)
  const all = falls.reduce((sum, [, share]) => sum + share, 0)
  const places: number[] = []
  let below = 0
  for (const [x, share] of falls) {
    below += share
    while (places.length < count && below >= (all * (places.length + 0.5)) / count) places.push(x)
  }
  return places
}
