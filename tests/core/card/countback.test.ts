import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type CountbackCard,
  compareByCountback,
  countback,
  countbackOrder,
  handicapShare,
} from '#core/card/countback.ts'
import { countbackMethods } from '#core/card/countback-methods.ts'
import { fraction } from '#core/values/fraction.ts'

const card = (scores: readonly number[], playingHandicap = 0, strokes: readonly number[] = []): CountbackCard => ({
  scores,
  playingHandicap,
  strokes,
})

/** Eighteen scores, all two but those named by hole. */
const twos = (changes: Readonly<Record<number, number>>): number[] =>
  Array.from({ length: 18 }, (_, at) => changes[at + 1] ?? 2)

const namesOf = (working: readonly { readonly name: string }[]): string[] => working.map(each => each.name)

describe('countback by the last nine, six, three and one (Committee Procedures 5A(6), quoted second-hand)', () => {
  it('stops at the step that separates, with the working up to it', () => {
    const cards = [card(twos({ 12: 1, 13: 3 })), card(twos({}))]
    const result = countback('points', 'nine-six-three-one', cards)
    expect(result).toEqual({
      winner: 0,
      decidedBy: 'last-6',
      working: [
        { name: 'last-9', figures: [fraction(18), fraction(18)] },
        { name: 'last-6', figures: [fraction(13), fraction(12)] },
      ],
    })
  })

  it('goes on with the last six, three and one of the first nine', () => {
    const result = countback('points', 'nine-six-three-one', [card(twos({ 3: 3, 4: 1 })), card(twos({}))])
    expect([result.winner, result.decidedBy]).toEqual([1, 'first-nine-last-6'])
    expect(namesOf(result.working)).toEqual(['last-9', 'last-6', 'last-3', 'last-hole', 'first-nine-last-6'])
  })

  it('leaves the rest to the terms when nothing separates', () => {
    const result = countback('gross', 'nine-six-three-one', [card(twos({ 1: 3 })), card(twos({ 2: 3 }))])
    expect([result.winner, result.decidedBy, result.working.length]).toEqual([null, null, 7])
  })

  it('drops a card of three once it is worse, whatever it has later', () => {
    const worse = card(twos({ 10: 0, 11: 0, 13: 5 }))
    const cards = [worse, card(twos({ 12: 1, 13: 3 })), card(twos({}))]
    const { winner, decidedBy, working } = countback('points', 'nine-six-three-one', cards)
    expect([winner, decidedBy]).toEqual([1, 'last-6'])
    expect(working.at(-1)?.figures).toEqual([fraction(15), fraction(13), fraction(12)])
  })
})

describe('countback of net scores', () => {
  it('takes the exact share of the handicap, never rounded (unions’ appendix on ties, quoted second-hand)', () => {
    const cards = [card(twos({ 10: 8 }), 11), card(twos({ 10: 8 }), 12)]
    const { winner, working } = countback('share-of-handicap', 'nine-six-three-one', cards)
    expect([winner, working[0]?.figures]).toEqual([1, [fraction(37, 2), fraction(18)]])
  })

  it('adds strokes to a plus player, whose share is negative', () => {
    const { working } = countback('share-of-handicap', 'nine-six-three-one', [card(twos({}), -3), card(twos({}), 0)])
    expect(working[0]?.figures).toEqual([fraction(39, 2), fraction(18)])
  })

  it('takes strokes as they fall, where the terms say so', () => {
    const early = card(
      twos({}),
      1,
      twos({}).map((_, at) => (at === 0 ? 1 : 0)),
    )
    const late = card(
      twos({}),
      1,
      twos({}).map((_, at) => (at === 17 ? 1 : 0)),
    )
    expect(countback('strokes-as-they-fall', 'nine-six-three-one', [early, late]).winner).toBe(1)
    expect(countback('share-of-handicap', 'nine-six-three-one', [early, late]).winner).toBeNull()
  })

  it('shares a nine-hole handicap over nine holes (derived, custom)', () => {
    expect(handicapShare(4, 3, 9)).toEqual(fraction(4, 3))
    expect(handicapShare(11, 3, 18)).toEqual(fraction(11, 6))
  })
})

describe('other countbacks', () => {
  it('a nine-hole round counts the last six, three and one', () => {
    const [first, second] = [
      [2, 3, 2, 2, 2, 2, 2, 2, 2],
      [3, 2, 2, 2, 2, 2, 2, 1, 3],
    ]
    const result = countback('points', 'nine-holes', [card(first), card(second)])
    expect([result.winner, result.decidedBy]).toEqual([1, 'last-hole'])
    expect(namesOf(result.working)).toEqual(['last-6', 'last-3', 'last-hole'])
  })

  it('house terms compare threes from the last hole', () => {
    const cards = [card(twos({ 9: 1, 10: 3 })), card(twos({ 12: 1, 18: 3 }))]
    expect(countback('points', 'threes-from-last', cards)).toMatchObject({ winner: 1, decidedBy: '16-18' })
    expect(countback('points', 'nine-six-three-one', cards)).toMatchObject({ winner: 0, decidedBy: 'last-9' })
  })

  it('the order is the card’s from any start, or that of play where the terms say so', () => {
    const played = [17, 18, 1, 2, 3]
    expect(countbackOrder('card-order', played)).toEqual([1, 2, 3, 17, 18])
    expect(countbackOrder('order-of-play', played)).toEqual(played)
  })

  it('does not depend on the order of the cards', () => {
    const anyCard = fc
      .array(fc.integer({ min: 1, max: 3 }), { minLength: 18, maxLength: 18 })
      .map(scores => card(scores))
    fc.assert(
      fc.property(
        anyCard,
        anyCard,
        fc.constantFrom(...countbackMethods.filter(each => each !== 'strokes-as-they-fall')),
        fc.constantFrom('nine-six-three-one', 'threes-from-last'),
        (first, second, method, scheme) => {
          const compared = compareByCountback(method, scheme, first, second)
          expect(compareByCountback(method, scheme, second, first)).toBe(0 - compared)
        },
      ),
    )
  })
})
