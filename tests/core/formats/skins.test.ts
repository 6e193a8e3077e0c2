import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { KnownNet } from '#core/formats/known-net.ts'
import { skinsOf } from '#core/formats/skins.ts'
import { skinsMethods } from '#core/formats/skins-methods.ts'

const anyNet = fc.oneof(fc.integer({ min: 2, max: 6 }), fc.constant<KnownNet>('picked-up'))
const anyRound = fc.array(fc.tuple(anyNet, anyNet, anyNet), { minLength: 1, maxLength: 18 })

describe('skins (common practice)', () => {
  it('carry a tied hole to the next', () => {
    const skins = skinsOf(
      [
        [4, 4, 4],
        [5, 5, 6],
        [3, 4, 4],
      ],
      'carry-over',
    )
    expect(skins.holes).toEqual([
      { winner: null, skins: 0, carried: 1 },
      { winner: null, skins: 0, carried: 2 },
      { winner: 0, skins: 3, carried: 0 },
    ])
    expect([skins.totals, skins.unclaimed]).toEqual([[3, 0, 0], 0])
  })

  it('lose a tied hole where nothing carries', () => {
    const skins = skinsOf(
      [
        [4, 4],
        [3, 4],
      ],
      'no-carry-over',
    )
    expect([skins.totals, skins.unclaimed]).toEqual([[1, 0], 1])
  })

  it('leave the last ones unclaimed', () => {
    expect(
      skinsOf(
        [
          [4, 4],
          [4, 4],
        ],
        'carry-over',
      ).unclaimed,
    ).toBe(2)
  })

  it('go to any number before a ball picked up, and to nobody where all picked up', () => {
    const skins = skinsOf(
      [
        ['picked-up', 9],
        ['picked-up', 'picked-up'],
      ],
      'carry-over',
    )
    expect([skins.totals, skins.unclaimed]).toEqual([[0, 1], 1])
  })

  it.each(skinsMethods)('account for one skin a hole: %s', method => {
    fc.assert(
      fc.property(anyRound, round => {
        const { totals, unclaimed } = skinsOf(round, method)
        expect(totals.reduce((sum, each) => sum + each, unclaimed)).toBe(round.length)
      }),
    )
  })

  it('a later hole never changes an earlier one', () => {
    fc.assert(
      fc.property(anyRound, round => {
        const whole = skinsOf(round, 'carry-over').holes
        expect(skinsOf(round.slice(0, -1), 'carry-over').holes).toEqual(whole.slice(0, -1))
      }),
    )
  })
})
