import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sixHolePairs, sixHolePartners, sixHoleTotals } from '#core/formats/six-hole-partners.ts'
import { fraction, plus, toNumber, zero } from '#core/values/fraction.ts'

const anyResult = fc.constantFrom<1 | 0 | -1>(1, 0, -1)

describe('partners that change every six holes (common practice)', () => {
  it('bring every two players together once', () => {
    const pairs = sixHolePairs.flat().map(pair => pair.join('-'))
    expect(pairs.sort()).toEqual(['0-1', '0-2', '0-3', '1-2', '1-3', '2-3'])
  })

  it('go by the order of the four', () => {
    expect([0, 1, 2, 3].map(sixHolePartners)).toEqual([
      [1, 2, 3],
      [0, 3, 2],
      [3, 0, 1],
      [2, 1, 0],
    ])
  })

  it('give one for a match won and a half for one halved', () => {
    expect(sixHoleTotals([1, -1, 0]).map(toNumber)).toEqual([1.5, 2.5, 0.5, 1.5])
    expect(sixHoleTotals([1]).map(toNumber)).toEqual([1, 1, 0, 0])
  })

  it('always come to six', () => {
    fc.assert(
      fc.property(fc.tuple(anyResult, anyResult, anyResult), results => {
        expect(sixHoleTotals(results).reduce(plus, zero)).toEqual(fraction(6))
      }),
    )
  })
})
