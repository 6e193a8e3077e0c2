import { expect, it } from 'vitest'
import { foursomesTeePlayer } from '#core/formats/foursomes-tee.ts'

it('one partner tees off at the odd holes, the other at the even ones (Rules of Golf 22.3, 2019 and 2023)', () => {
  expect([1, 2, 17, 18].map(hole => foursomesTeePlayer('odd', hole))).toEqual(['first', 'second', 'first', 'second'])
  expect([1, 14].map(hole => foursomesTeePlayer('even', hole))).toEqual(['second', 'first'])
})
