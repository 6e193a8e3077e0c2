import type { HoleKey } from '#core/card/score.ts'
import { type MatchStrokesMethod, matchStrokes } from '#core/handicap/match-strokes.ts'
import { type AllowanceRounding, playingHandicap } from '#core/handicap/playing-handicap.ts'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'
import { must } from '#core/values/assert.ts'
import { type Fraction, fraction, roundHalfUp } from '#core/values/fraction.ts'
import { rememberByName } from '#core/values/memo.ts'
import type { BallHandicap, InputHole } from './game-input.ts'
import type { GameMethods } from './game-methods.ts'
import type { BallStrokes } from './game-result.ts'

/** The methods that a game's strokes come from. */
export interface StrokeMethods {
  readonly allowancePercent: number
  readonly rounding: AllowanceRounding
  /** Null outside a match. */
  readonly matchStrokes: MatchStrokesMethod | null
}

/**
 * The methods for balls of so many players. The handicap of a ball of several holds its allowance and its partners'
 * rounding already; two such sides are compared whole, or unrounded and rounded once.
 */
export function strokeMethodsOf(methods: GameMethods, players: number): StrokeMethods {
  if (players > 1) {
    const isWholeFirst = methods.sideStrokes === 'from-rounded-side-handicaps'
    return {
      allowancePercent: 100,
      rounding: 'course-handicap-unrounded',
      matchStrokes: isWholeFirst ? 'from-lowest-playing-handicap' : 'difference-of-unrounded-course-handicaps',
    }
  }
  return {
    allowancePercent: must(methods.allowancePercent, 'the allowance is set'),
    rounding: must(methods.rounding, 'the rounding is set'),
    matchStrokes: methods.matchStrokes,
  }
}

export type KnownHandicap = Exclude<BallHandicap, { readonly kind: 'gap' }>

/** Each ball's own strokes: its playing handicap, or the plain strokes as they are. */
export function ownStrokes(handicap: KnownHandicap, { allowancePercent, rounding }: StrokeMethods): number {
  return handicap.kind === 'plain' ? handicap.strokes : playingHandicap(handicap.exact, allowancePercent, rounding)
}

/**
 * The strokes given in a match, over all its balls at once. Plain strokes are what they are: where any ball has them
 * the difference is taken from the lowest of plain strokes and playing handicaps together.
 */
export function strokesGiven(handicaps: readonly KnownHandicap[], methods: StrokeMethods): number[] {
  const method = must(methods.matchStrokes, 'a match has a method for its strokes')
  const exact = handicaps.flatMap(each => (each.kind === 'course' ? [each.exact] : []))
  if (exact.length === handicaps.length) {
    return matchStrokes(method, baseOf(exact, method, methods.rounding), methods.allowancePercent)
  }
  const own = handicaps.map(each => ownStrokes(each, methods))
  const lowest = Math.min(...own)
  return own.map(each => each - lowest)
}

/** The game's rounding belongs to the playing handicap; the methods by difference name their own. */
function baseOf(exact: readonly Fraction[], method: MatchStrokesMethod, rounding: AllowanceRounding): Fraction[] {
  const isRounded = method === 'from-lowest-playing-handicap' && rounding === 'course-handicap-rounded-first'
  return exact.map(each => (isRounded ? fraction(roundHalfUp(each)) : each))
}

/** A ball's strokes laid on its holes; what a tee's par adds is in both figures already. */
export const ballStrokes = (
  handicap: KnownHandicap,
  playing: number,
  strokes: number,
  forTeePar: number,
  holes: readonly InputHole[],
): BallStrokes => ({
  courseHandicap: handicap.kind === 'course' ? handicap.exact : null,
  playingHandicap: playing,
  strokes,
  forTeePar,
  byHole: strokesByHole(strokes, holes),
})

/** No strokes at all: a game by gross scores. */
export const noStrokes = (holes: readonly InputHole[]): BallStrokes => ({
  courseHandicap: null,
  playingHandicap: 0,
  strokes: 0,
  forTeePar: 0,
  byHole: strokesByHole(0, holes),
})

/**
 * Strokes fall over the scheduled holes as the card prints them, so that the start hole changes nothing; an extra hole
 * takes what the same hole has in the round, and none where the round does not have it.
 */
export const strokesByHole = (strokes: number, holes: readonly InputHole[]): ReadonlyMap<HoleKey, number> =>
  laidStrokes(holes, strokes)

const laidStrokes = rememberByName((holes: readonly InputHole[], strokes: number): ReadonlyMap<HoleKey, number> => {
  const byCard = [...holes].sort((a, b) => a.lap - b.lap || a.hole - b.hole)
  const scheduled = byCard.filter(({ isScheduled }) => isScheduled)
  if (scheduled.length === 0) return new Map()
  const allocated = allocateStrokes(
    strokes,
    scheduled.map(({ index }) => index),
  )
  const byKey = new Map(scheduled.map(({ key }, place) => [key, allocated[place] ?? 0]))
  const byNumber = new Map(scheduled.map(({ hole }, place) => [hole, allocated[place] ?? 0]))
  return new Map(holes.map(({ key, hole }) => [key, byKey.get(key) ?? byNumber.get(hole) ?? 0]))
})
