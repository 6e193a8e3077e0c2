import { must, unreachable } from '#core/values/assert.ts'
import { compareFractions, type Fraction, fraction, minus } from '#core/values/fraction.ts'
import type { CountbackHoles, CountbackMethod, CountbackScheme } from './countback-methods.ts'

/** A run of holes that is compared, by positions in the order of the lists given. */
export interface CountbackStep {
  readonly name: string
  readonly from: number
  readonly to: number
}

const step = (name: string, from: number, to: number): CountbackStep => ({ name, from, to })

const threesFrom = (starts: readonly number[]): CountbackStep[] =>
  starts.map(from => step(`${from}-${from + 2}`, from, from + 2))

/**
 * Source: Committee Procedures 5A(6), R&A, quoted second-hand: the last nine, six, three and one hole, then the last six,
 * three and one of the first nine. Nine holes: derived from it, custom. In threes from the last hole: house terms.
 */
const stepsOf: Record<CountbackScheme, readonly CountbackStep[]> = {
  'nine-six-three-one': [
    step('last-9', 10, 18),
    step('last-6', 13, 18),
    step('last-3', 16, 18),
    step('last-hole', 18, 18),
    step('first-nine-last-6', 4, 9),
    step('first-nine-last-3', 7, 9),
    step('first-nine-last-hole', 9, 9),
  ],
  'nine-holes': [step('last-6', 4, 9), step('last-3', 7, 9), step('last-hole', 9, 9)],
  'threes-from-last': threesFrom([16, 13, 10, 7, 4, 1]),
  'threes-from-last-of-nine': threesFrom([7, 4, 1]),
}

const holesOf = (scheme: CountbackScheme): 9 | 18 => (isOfNine(scheme) ? 9 : 18)

const isOfNine = (scheme: CountbackScheme): boolean => scheme === 'nine-holes' || scheme === 'threes-from-last-of-nine'

/** A card that takes part; lists run in the order that counts (`countbackOrder`). */
export interface CountbackCard {
  /** Gross strokes, or points. */
  readonly scores: readonly number[]
  /** The handicap of the competition, after the allowance. */
  readonly playingHandicap: number
  /** Strokes received on each hole. */
  readonly strokes: readonly number[]
}

/**
 * What a card counts on a step. A share of the handicap is holes / holes of the round of it and never rounded; points and
 * results by hole hold the handicap already.
 * Source: advice of the national unions of Great Britain and Ireland (appendix on ties), quoted second-hand, and the older
 * text that fractions are not disregarded.
 */
export function countbackFigure(
  method: CountbackMethod,
  scheme: CountbackScheme,
  { from, to }: CountbackStep,
  card: CountbackCard,
): Fraction {
  const total = sumOf(card.scores.slice(from - 1, to))
  switch (method) {
    case 'gross':
    case 'points':
      return fraction(total)
    case 'share-of-handicap':
      return minus(fraction(total), handicapShare(card.playingHandicap, to - from + 1, holesOf(scheme)))
    case 'strokes-as-they-fall':
      return fraction(total - sumOf(card.strokes.slice(from - 1, to)))
    default:
      return unreachable(method)
  }
}

/** The share of a handicap that belongs to some of the holes of a round, unrounded. */
export const handicapShare = (playingHandicap: number, holes: number, holesOfRound: 9 | 18): Fraction =>
  fraction(playingHandicap * holes, holesOfRound)

/** One step of the working: its name and each card's figure, in the order of the cards. */
export interface CountbackWorking {
  readonly name: string
  readonly figures: readonly Fraction[]
}

/** Tied cards in order. */
export interface CountbackRanking {
  /** Positions among the cards, the best first; cards that no step separates keep their order. */
  readonly order: readonly number[]
  /** The step that puts each of the order before the next; `null` where none does: the terms say what follows. */
  readonly decidedBy: readonly (string | null)[]
  /** Up to the last step that was needed. */
  readonly working: readonly CountbackWorking[]
}

/** Every tied card in order, with the working. A card worse than another on a step takes no part in later ones. */
export function rankByCountback(
  method: CountbackMethod,
  scheme: CountbackScheme,
  cards: readonly CountbackCard[],
): CountbackRanking {
  const steps = stepsOf[scheme]
  // Most ties are split by the first step: later ones are counted where they are needed.
  const counted: CountbackWorking[] = []
  const workingOf = (step: number): CountbackWorking => {
    while (counted.length <= step) {
      const each = must(steps[counted.length], 'countback: a step of the scheme')
      counted.push({ name: each.name, figures: cards.map(card => countbackFigure(method, scheme, each, card)) })
    }
    return must(counted[step], 'countback: counted just now')
  }
  const compared = (one: number, other: number): { readonly step: number; readonly by: number } => {
    for (let step = 0; step < steps.length; step++) {
      const by = compareFigures(method, workingOf(step).figures, one, other)
      if (by !== 0) return { step, by }
    }
    return { step: -1, by: 0 }
  }
  const order = cards.map((_, at) => at).sort((one, other) => compared(one, other).by)
  const needed = order.slice(1).map((next, at) => compared(must(order[at], 'countback: one before it'), next).step)
  const last = needed.includes(-1) ? steps.length - 1 : Math.max(-1, ...needed)
  return {
    order,
    decidedBy: needed.map(step => steps[step]?.name ?? null),
    working: last < 0 ? [] : counted.slice(0, last + 1),
  }
}

/** Negative where the first card's figure is the better one. */
function compareFigures(method: CountbackMethod, figures: readonly Fraction[], one: number, other: number): number {
  const figureOf = (at: number): Fraction => must(figures[at], 'countback: a figure for each card')
  const compared = compareFractions(figureOf(one), figureOf(other))
  return method === 'points' ? -compared : compared
}

export interface Countback {
  /** Position of the winner among the cards; `null` when no step separates the best: the terms say what follows. */
  readonly winner: number | null
  readonly decidedBy: string | null
  /** Up to the step that decides. */
  readonly working: readonly CountbackWorking[]
}

/** The best of tied cards, with the working. */
export function countback(
  method: CountbackMethod,
  scheme: CountbackScheme,
  cards: readonly CountbackCard[],
): Countback {
  const { order, decidedBy, working } = rankByCountback(method, scheme, cards)
  const [step = null] = decidedBy
  const [best = null] = order
  const last = working.findIndex(({ name }) => name === step)
  return step === null
    ? { winner: null, decidedBy: null, working }
    : { winner: best, decidedBy: step, working: working.slice(0, last + 1) }
}

/** Negative, zero or positive as the first card comes before, level with or after the second. */
export function compareByCountback(
  method: CountbackMethod,
  scheme: CountbackScheme,
  first: CountbackCard,
  second: CountbackCard,
): number {
  const { winner } = countback(method, scheme, [first, second])
  return winner === null ? 0 : winner === 0 ? -1 : 1
}

/**
 * The holes of a round in the order that a countback takes them. Usual in every kind of start: the 10th to 18th of the card.
 * Source: USGA manual and older text on ties, before 2019; the present text is remembered to say the same. Holes as they
 * were played: terms of some clubs.
 */
export function countbackOrder(holes: CountbackHoles, orderOfPlay: readonly number[]): number[] {
  switch (holes) {
    case 'card-order':
      return [...orderOfPlay].sort((a, b) => a - b)
    case 'order-of-play':
      return [...orderOfPlay]
    default:
      return unreachable(holes)
  }
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0)
