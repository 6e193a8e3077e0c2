import { expect, it } from 'vitest'
import { ruleOnUnfinishedSide } from '#core/formats/rulings/unfinished-side.ts'

it('a four-ball side without a score loses the hole, or is out of stroke play (Rules of Golf 23.2, 2019 and 2023)', () => {
  expect(ruleOnUnfinishedSide('match')).toBe('loses-hole')
  expect(ruleOnUnfinishedSide('stroke-play')).toBe('disqualified-unless-corrected')
})
