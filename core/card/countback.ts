import { must, unreachable } from '#core/values/assert.ts'
import { compareFractions, type Fraction, fraction, minus } from '#core/values/fraction.ts'

/** What is counted over the holes of a countback; bodies and terms differ for net scores. */
export const countbackMethods = ['gross', 'share-of-handicap', 'strokes-as-they-fall', 'points'] as const
export type CountbackMethod = (typeof countbackMethods)[number]

/** Which holes are counted, in which order. */
export const countbackSchemes = ['nine-six-three-one', 'nine-holes', 'threes-from-last'] as const
export type CountbackScheme = (typeof countbackSchemes)[number]

/** A run of holes that is compared, by positions in the order of the lists given. */
export interface CountbackStep {
  readonly name: string
  readonly from: number
  readonly to: number
}

const step = (name: string, from: number, to: number): CountbackStep => ({ name, from, to })

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
  'threes-from-last': [16, 13, 10, 7, 4, 1].map(from => step(`${from}-${from + 2}`, from, from + 2)),
}

const holesOf = (scheme: CountbackScheme): 9 | 18 => (scheme === 'nine-holes' ? 9 : 18)

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

export interface Countback {
  /** Position of the winner among the cards; `null` when no step separates the best: the terms say what follows. */
  readonly winner: number | null
  readonly decidedBy: string | null
  /** Up to the step that decides. */
  readonly working: readonly CountbackWorking[]
}

/** The best of tied cards, with the working. A card worse than another on a step takes no part in later ones. */
export function countback(
  method: CountbackMethod,
  scheme: CountbackScheme,
  cards: readonly CountbackCard[],
): Countback {
  const working: CountbackWorking[] = []
  let left = cards.map((_, at) => at)
  for (const each of stepsOf[scheme]) {
    const figures = cards.map(card => countbackFigure(method, scheme, each, card))
    working.push({ name: each.name, figures })
    left = bestOf(left, figures, method)
    if (left.length === 1) return { winner: must(left[0], 'countback: one is left'), decidedBy: each.name, working }
  }
  return { winner: null, decidedBy: null, working }
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

/** The cards, of those left, that no other beats. */
function bestOf(left: readonly number[], figures: readonly Fraction[], method: CountbackMethod): number[] {
  const figureOf = (at: number): Fraction => must(figures[at], 'countback: a figure for each card')
  const sign = method === 'points' ? -1 : 1
  const beats = (one: number, other: number): boolean => sign * compareFractions(figureOf(one), figureOf(other)) < 0
  return left.filter(at => !left.some(other => beats(other, at)))
}

/** Whether the last nine are the card's, wherever a group started, or the last nine it played. */
export const countbackHoles = ['card-order', 'order-of-play'] as const
export type CountbackHoles = (typeof countbackHoles)[number]

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
