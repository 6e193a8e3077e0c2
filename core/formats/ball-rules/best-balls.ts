import type { BallRule } from '#core/formats/parts.ts'
import { must } from '#core/values/assert.ts'

/**
 * The best few of the side's balls, so many on every hole or by hole: the game's list runs along the order of play and
 * starts again at its end. A team goes on without a ball that is disqualified.
 * Source: Rules of Golf, rule 24 (the committee fixes how scores combine; a disqualified player's score does not count
 * where not all do); R&A and USGA; 2019 and 2023. One, two, three by turns: common practice.
 */
export const bestBalls: BallRule = {
  countOf: ({ methods, order, hole }) => {
    const list = must(methods.countingBalls, 'the number of balls that count is set')
    const place = order.findIndex(({ key }) => key === hole)
    return must(list[Math.max(0, place) % list.length], 'the list has a number')
  },
  disqualifiedWith: 'ball',
}
