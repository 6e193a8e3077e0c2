import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import type { TieTerms } from '#core/formats/game-methods.ts'
import { resultOf } from '#tests/kit/played-game.ts'
import { holds, same } from '#tests/kit/property.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'

/** Points one to three on every hole, of nine or eighteen. */
const anyField = fc.constantFrom<(9 | 18)[]>(9, 18).chain(length =>
  fc.record({
    length: fc.constant(length),
    // Few holes that differ, so that ties are many.
    cards: fc.array(
      fc.dictionary(fc.integer({ min: 1, max: length }).map(String), fc.integer({ min: 1, max: 3 }), { maxKeys: 4 }),
      { minLength: 2, maxLength: 5 },
    ),
    scheme: fc.constantFrom<TieTerms['scheme'][]>('nine-six-three-one', 'threes-from-last'),
  }),
)

/** The sums that a pencil compares one after the other, the total first. */
function sumsOf(points: readonly number[], scheme: TieTerms['scheme']): number[] {
  const sum = (from: number, to: number) => points.slice(from - 1, to).reduce((all, each) => all + each, 0)
  const last = points.length
  const total = sum(1, last)
  if (scheme === 'threes-from-last') {
    return [total, ...Array.from({ length: last / 3 }, (_, n) => sum(last - 3 * n - 2, last - 3 * n))]
  }
  const ofNine = [sum(last - 5, last), sum(last - 2, last), sum(last, last)]
  return last === 9 ? [total, ...ofNine] : [total, sum(10, 18), ...ofNine, sum(4, 9), sum(7, 9), sum(9, 9)]
}

function compareSums(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((each, place) => each !== other[place])
  return at === -1 ? 0 : (other[at] ?? 0) - (one[at] ?? 0)
}

describe('the countback of a field', () => {
  holds('gives every side the place that its sums give it', anyField, ({ length, cards, scheme }) => {
    const points = cards.map(card => Array.from({ length }, (_, place) => card[String(place + 1)] ?? 2))
    const { lines, ties } = resultOf('total', {
      format: 'stableford',
      sides: points.map((_, at) => [`p${at}`]),
      scores: Object.fromEntries(
        points.map((each, at) => [`p${at}`, each.map((point, place) => (quillmoor.pars[place] ?? 4) + 2 - point)]),
      ),
      round: roundFrom(1, length),
      methods: { ties: { method: 'points', scheme, holes: 'card-order', ifStillTied: 'shared' } },
    })
    const sums = points.map(each => sumsOf(each, scheme))
    for (const { side, place, isTied } of lines) {
      const own = sums[Number(side[0]?.slice(1))] ?? []
      expect(place).toBe(1 + sums.filter(other => compareSums(other, own) < 0).length)
      expect(isTied).toBe(sums.filter(other => compareSums(other, own) === 0).length > 1)
    }
    // Nobody's total moves, and each tie that was counted back says what decided it or that nothing did.
    same(
      lines.map(({ total }) => total),
      sums.map(([total]) => total).sort((a, b) => (b ?? 0) - (a ?? 0)),
    )
    for (const tie of ties) {
      expect(tie.decidedBy).toHaveLength(tie.sides.length - 1)
      expect(tie.ifStillTied === null).toBe(!tie.decidedBy.includes(null))
    }
  })
})
