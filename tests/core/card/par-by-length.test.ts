import { describe, expect, it } from 'vitest'
import { parCandidates } from '#core/card/par-by-length.ts'

describe('par by length (Rules of Handicapping, Appendix F, 2020 and 2024)', () => {
  it.each([
    [470, 'yards', 'men', [4, 5]],
    [400, 'yards', 'women', [4, 5]],
    [260, 'yards', 'men', [3, 4]],
    [261, 'yards', 'men', [4]],
    [120, 'metres', 'women', [3]],
    [430, 'metres', 'men', [4, 5]],
    [560, 'metres', 'women', [6]],
    [700, 'metres', 'men', [6]],
  ] as const)('%d %s for %s can be %j', (length, unit, gender, pars) => {
    expect(parCandidates(length, unit, gender)).toEqual(pars)
  })

  it('is held against the column of the unit, as the table prints metres rounded', () => {
    // 490 yards are 448 m.
    expect(parCandidates(491, 'yards', 'men')).toEqual([5])
    expect(parCandidates(449, 'metres', 'men')).toEqual([4, 5])
  })
})
