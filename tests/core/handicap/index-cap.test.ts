import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { capRise } from '#core/handicap/index-cap.ts'
import { fraction } from '#core/values/fraction.ts'

describe('caps on a rise (Rules of Handicapping 5.8, USGA, 2020 and 2024)', () => {
  it.each([
    [134, 100, 'soft', 132],
    [116, 65, 'soft', 106],
    [182, 102, 'hard', 152],
  ] as const)('hold %d over a low of %d by the %s cap at %d (printed)', (calculated, low, cap, expected) => {
    expect(capRise(calculated, low)).toMatchObject({ cap, indexTenths: expected })
  })

  it('begin above 3.0 and keep every digit before the tenth', () => {
    expect(capRise(130, 100)).toMatchObject({ cap: 'none', indexTenths: 130 })
    expect(capRise(131, 100)).toEqual({ cap: 'soft', unroundedTenths: fraction(261, 2), indexTenths: 131 })
  })

  it('are hard only above 5.0', () => {
    expect(capRise(170, 100)).toMatchObject({ cap: 'soft', indexTenths: 150 })
    expect(capRise(171, 100)).toMatchObject({ cap: 'hard', indexTenths: 150 })
  })

  it('come before the maximum of 54.0', () => {
    expect(capRise(600, 520)).toMatchObject({ cap: 'hard', unroundedTenths: fraction(570), indexTenths: 540 })
  })

  it('need a Low Index, and never lower below it', () => {
    expect(capRise(182, null)).toMatchObject({ cap: 'none', indexTenths: 182 })
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 540 }), fc.integer({ min: -50, max: 540 }), (calculated, low) => {
        const { indexTenths } = capRise(calculated, low)
        expect(indexTenths).toBeLessThanOrEqual(Math.min(540, Math.max(calculated, low)))
        expect(indexTenths).toBeLessThanOrEqual(low + 50)
        expect(indexTenths).toBeGreaterThanOrEqual(Math.min(calculated, low))
      }),
    )
  })
})
