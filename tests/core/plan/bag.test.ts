import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bagOf, clubsOffTheGround, longestOf } from '#core/plan/bag.ts'
import { type Club, clubs, ladderThousandths } from '#core/plan/clubs.ts'
import { anySaid, saidOfAlder } from '../../kit/player-plan.ts'
import { holds } from '../../kit/property.ts'

const carriesOf = (said: readonly (readonly [Club, number | null])[]) =>
  bagOf(new Map(said)).clubs.map(({ club, carry, isEstimated }) => [club, carry, isEstimated])

describe('a bag', () => {
  it('is estimated from three numbers, and says which ones are', () => {
    // By the ladder, which is our own: 5 iron 720, 6 iron 675, 7 iron 630 thousandths of the driver's carry.
    expect(
      carriesOf([
        ['driver', null],
        ['iron-5', 170],
        ['iron-6', null],
        ['iron-7', 150],
        ['sand-wedge', 90],
        ['lob-wedge', null],
      ]),
    ).toEqual([
      ['driver', 236, true],
      ['iron-5', 170, false],
      ['iron-6', 160, true],
      ['iron-7', 150, false],
      ['sand-wedge', 90, false],
      ['lob-wedge', 76, true],
    ])
  })

  it('estimates nothing from two', () => {
    const bag = bagOf(
      new Map<Club, number | null>([
        ['iron-7', 150],
        ['driver', 220],
        ['iron-9', null],
      ]),
    )
    expect(bag.clubs.map(({ club }) => club)).toEqual(['driver', 'iron-7'])
    expect(bag.unknown).toEqual(['iron-9'])
  })

  it('keeps a driver for the tee', () => {
    const bag = bagOf(saidOfAlder)
    expect(longestOf(bag.clubs)?.club).toBe('driver')
    expect(longestOf(clubsOffTheGround(bag))?.club).toBe('wood-3')
  })

  it('has a ladder on which no club of more loft goes farther', () => {
    const shares = clubs.map(club => ladderThousandths[club])
    expect([...shares].sort((a, b) => b - a)).toEqual(shares)
  })

  const holdsEachOnce = (said: ReadonlyMap<Club, number | null>): void => {
    const bag = bagOf(said)
    expect([...bag.clubs.map(({ club }) => club), ...bag.unknown].sort()).toEqual([...said.keys()].sort())
    for (const { club, carry, isEstimated } of bag.clubs) {
      expect(isEstimated).toBe(said.get(club) === null)
      if (!isEstimated) expect(carry).toBe(said.get(club))
      expect(carry).toBeGreaterThan(0)
    }
  }
  holds('holds every club once, each with its own number or one worked out', anySaid, holdsEachOnce, 3_000)

  /** Numbers that fall with the loft, for clubs that all stand on steps of their own. */
  const sensible = fc
    .tuple(
      fc.uniqueArray(fc.constantFrom(...clubs), { selector: club => ladderThousandths[club], minLength: 3 }),
      fc.array(fc.integer({ min: 30, max: 330 }), { minLength: clubs.length, maxLength: clubs.length }),
    )
    .map(([chosen, carries]) => {
      const falling = [...carries].sort((a, b) => b - a)
      const inOrder = clubs.filter(club => chosen.includes(club))
      return new Map<Club, number | null>(inOrder.map((club, at) => [club, falling[at] ?? 30]))
    })
  const fallsWithLoft = (said: ReadonlyMap<Club, number | null>): void => {
    const { clubs: all } = bagOf(new Map(clubs.map(club => [club, said.get(club) ?? null])))
    for (const [at, { club, carry }] of all.entries()) {
      const next = all.slice(at + 1).find(other => ladderThousandths[other.club] < ladderThousandths[club])
      if (next) expect(next.carry).toBeLessThanOrEqual(carry)
    }
  }
  holds('estimates no longer carry for more loft where the numbers fall with the loft', sensible, fallsWithLoft, 3_000)
})
