import type { AllowanceRounding } from '#core/handicap/playing-handicap.ts'
import { teamHandicap } from '#core/handicap/team-handicap.ts'
import { type TeeParForm, teeParAddition } from '#core/handicap/tee-par.ts'
import { type Fraction, fraction, plus, roundHalfUp } from '#core/values/fraction.ts'
import type { BallHandicap, PlayerHandicap } from './game-input.ts'
import type { GameMethods, MixedTeesMethod } from './game-methods.ts'
import type { GameGap } from './game-result.ts'

/**
 * What a ball plays off: its player's handicap, or for a ball of several the shares of theirs, the lowest first,
 * unrounded. Plain strokes of a partner go into the shares as they are. A difference between the partners' pars that is
 * added to their handicaps follows how the results are recorded; with the par of one tee everybody's handicap is made for
 * it. A Course Handicap without rating minus par has no par in it to put right.
 * Source: Rules of Handicapping, Appendix C and rule 6.2a; USGA and R&A; 2024.
 */
export function ballHandicap(
  players: readonly PlayerHandicap[],
  methods: GameMethods,
  recordedAs: TeeParForm,
): BallHandicap {
  const [first, ...others] = players
  if (first === undefined) return gap('handicap missing')
  return others.length === 0 ? first.handicap : sharedHandicap(players, methods, recordedAs)
}

/** The par of the holes of the round that a ball's handicap is meant for; null while unknown. */
export function parOfBall(players: readonly PlayerHandicap[], { mixedTees }: GameMethods): number | null {
  const pars = players.flatMap(({ parOfRound }) => parOfRound ?? [])
  if (pars.length === 0 || pars.length < players.length) return null
  return players.length === 1 || mixedTees === null ? (pars[0] ?? null) : baselinePar(mixedTees, pars)
}

const gap = (code: GameGap['code']): BallHandicap => ({ kind: 'gap', code })

function sharedHandicap(
  players: readonly PlayerHandicap[],
  methods: GameMethods,
  recordedAs: TeeParForm,
): BallHandicap {
  const { handicapShares, mixedTees, rounding } = methods
  if (handicapShares === null || mixedTees === null || rounding === null) return gap('setting missing')
  const shares = handicapShares.find(({ length }) => length === players.length)
  if (shares === undefined) return gap('wrong sides')
  const pars = players.flatMap(({ parOfRound }) => (parOfRound === null ? [] : [parOfRound]))
  const baseline = baselinePar(mixedTees, pars)
  if (pars.length < players.length || baseline === null) return gap('course incomplete')
  const exact: Fraction[] = []
  for (const [place, { handicap }] of players.entries()) {
    if (handicap.kind === 'gap') return handicap
    const own = pars[place] ?? baseline
    exact.push(partnersHandicap(handicap, parDifference(methods, recordedAs, own, baseline), rounding))
  }
  return { kind: 'course', exact: teamHandicap(exact, shares) }
}

/** Of one tee: the tee of the partner named first: it gives the ball its pars and stroke indexes too. */
const baselinePar = (method: MixedTeesMethod, pars: readonly number[]): number | null =>
  (method === 'one-tee-par' ? pars[0] : Math.min(...pars)) ?? null

function parDifference(
  { courseHandicap, mixedTees }: GameMethods,
  recordedAs: TeeParForm,
  own: number,
  baseline: number,
): number {
  if (courseHandicap === 'without-rating-minus-par') return 0
  return mixedTees === 'one-tee-par' ? own - baseline : teeParAddition(recordedAs, own, baseline)
}

function partnersHandicap(
  handicap: Exclude<BallHandicap, { readonly kind: 'gap' }>,
  parDifference: number,
  rounding: AllowanceRounding,
): Fraction {
  if (handicap.kind === 'plain') return fraction(handicap.strokes)
  const ofTee = rounding === 'course-handicap-rounded-first' ? fraction(roundHalfUp(handicap.exact)) : handicap.exact
  return plus(ofTee, fraction(parDifference))
}
