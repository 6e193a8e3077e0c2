import { expect, it } from 'vitest'
import { compareNets, type KnownNet } from '#core/formats/known-net.ts'

it('a ball picked up is worse than any number and level with another (common practice)', () => {
  const nets: KnownNet[] = ['picked-up', 9, 3, 'picked-up', -1]
  expect(nets.sort(compareNets)).toEqual([-1, 3, 9, 'picked-up', 'picked-up'])
  expect(compareNets('picked-up', 'picked-up')).toBe(0)
})
