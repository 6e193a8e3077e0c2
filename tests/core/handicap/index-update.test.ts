import { describe, expect, it } from 'vitest'
import { updateIndex } from '#core/handicap/index-update.ts'
import { fraction } from '#core/values/fraction.ts'

const methods = { exceptional: 'differential-unrounded', firstIndex: 'from-three-scores' } as const

describe('one update of an Index (Rules of Handicapping 5.2, 5.3, 5.7 to 5.9)', () => {
  it('lowers the record first, then averages: 13.5 becomes 12.5 (Danish union)', () => {
    // Eight differentials that average 13.5, the exceptional 6.8 among them.
    const counting = [68, 144, 144, 144, 145, 145, 145, 145]
    const record = [...counting, ...Array.from({ length: 12 }, () => 200)]
    const update = updateIndex(
      {
        differentialsTenths: record,
        newestUnrounded: fraction(68, 10),
        indexWhenPlayedTenths: 148,
        lowIndexTenths: null,
      },
      methods,
    )
    expect(update).toMatchObject({
      reductionTenths: -10,
      calculatedTenths: 125,
      capped: { cap: 'none', indexTenths: 125 },
    })
  })

  it('takes the tenth before the caps', () => {
    const record = [...Array.from({ length: 4 }, () => 130), ...Array.from({ length: 16 }, () => 131)]
    const update = updateIndex(
      { differentialsTenths: record, newestUnrounded: fraction(13), indexWhenPlayedTenths: 120, lowIndexTenths: 100 },
      methods,
    )
    expect(update?.averageTenths).toEqual(fraction(261, 2))
    expect(update?.calculatedTenths).toBe(131)
    expect(update?.capped).toEqual({ cap: 'soft', unroundedTenths: fraction(261, 2), indexTenths: 131 })
  })

  it('reduces nothing before there was an Index, and gives none from two scores', () => {
    const record = { newestUnrounded: fraction(2), indexWhenPlayedTenths: null, lowIndexTenths: null }
    expect(updateIndex({ ...record, differentialsTenths: [20, 200, 200] }, methods)?.capped.indexTenths).toBe(0)
    expect(updateIndex({ ...record, differentialsTenths: [20, 200] }, methods)).toBeNull()
  })
})
