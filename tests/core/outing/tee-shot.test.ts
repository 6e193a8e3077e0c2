import { describe, expect, it } from 'vitest'
import { ballsInTurn, teeShotOf } from '#core/outing/tee-shot.ts'
import { must } from '#core/values/assert.ts'
import type { PlayerId } from '#core/values/ids.ts'
import { autumnDay, outingOfPlain, plainWith, settledWith } from '#tests/kit/plain-outing.ts'
import { ball, hole } from '#tests/kit/played-game.ts'

const foursomes = {
  balls: [
    { id: 'ab', players: ['alder', 'birch'] },
    { id: 'cr', players: ['cedar', 'rowan'] },
  ],
  groups: [{ id: 'four', name: 'Group', balls: ['ab', 'cr'] }],
  games: [{ id: 'g', format: 'foursomes-match', sides: [['ab'], ['cr']] }],
  main: 'g',
  scores: [],
}
const dayWith = (teeShots: readonly object[], change: object = {}) =>
  outingOfPlain(plainWith({ ...foursomes, teeShots, ...change }))

/** Who tees off for Alder and Birch on these holes. */
function teeShotsOn(outing: ReturnType<typeof dayWith>, ...holes: readonly (number | readonly [number, number])[]) {
  const pair = must(outing.balls.get(ball('ab')), 'the ball is there')
  return holes.map(at => {
    const [hole, lap] = typeof at === 'number' ? [at, 1] : at
    return teeShotOf(outing, pair, { hole, lap })
  })
}
const first = { ball: 'ab', player: 'alder', hole: 1 }

// Rules of Golf, rule 22.3; R&A and USGA; 2019 and 2023.
describe('who tees off in foursomes', () => {
  it('is one partner at the odd holes and the other at the even ones', () => {
    expect(teeShotsOn(dayWith([first]), 1, 2, 3, 17, 18)).toEqual(['alder', 'birch', 'alder', 'alder', 'birch'])
  })

  it('is nobody until it is said', () => {
    expect(teeShotsOn(dayWith([]), 1)).toEqual([null])
    expect(settledWith({ ...foursomes }).teeShots).toEqual([])
  })

  it('holds for the holes before it too where it was said late', () => {
    const late = { ...first, hole: 4 }
    expect(teeShotsOn(dayWith([late]), 1, 2, 3, 4, 5)).toEqual(['birch', 'alder', 'birch', 'alder', 'birch'])
  })

  it('may change from a hole on, and the holes behind stay', () => {
    const change = { ...first, player: 'birch', hole: 7 }
    expect(teeShotsOn(dayWith([first, change]), 5, 6, 7, 8)).toEqual(['alder', 'birch', 'birch', 'alder'])
  })

  it('goes on in turn from any start and over extra holes', () => {
    const order = [...Array(18).keys()].map(step => [((step + 1) % 18) + 1, 1])
    const groups = [{ ...foursomes.groups[0], order: [...order, [1, 2]] }]
    const outing = dayWith([{ ...first, hole: 2 }], { groups })
    expect(teeShotsOn(outing, 2, 3, 18, 1, [1, 2])).toEqual(['alder', 'birch', 'alder', 'birch', 'alder'])
  })

  it('goes on in turn where the same nine is played twice', () => {
    const nine = [...Array(18).keys()].map(step => [(step % 9) + 1, step < 9 ? 1 : 2])
    const groups = [{ ...foursomes.groups[0], order: nine }]
    expect(teeShotsOn(dayWith([first], { groups }), 9, [1, 2], [2, 2])).toEqual(['alder', 'birch', 'alder'])
  })

  it('is asked of balls of two in foursomes alone', () => {
    expect(ballsInTurn(dayWith([])).map(({ id }) => id)).toEqual(['ab', 'cr'])
    for (const format of ['greensomes-match', 'chapman-match']) {
      expect(ballsInTurn(dayWith([], { games: [{ ...foursomes.games[0], format }] }))).toEqual([])
    }
    expect(ballsInTurn(outingOfPlain(plainWith()))).toEqual([])
  })

  it('says nothing of a partner who is none', () => {
    const outing = dayWith([first])
    const teeShots = new Map([[ball('ab'), new Map([[hole(1), 'cedar' as PlayerId]])]])
    expect(teeShotsOn({ ...outing, notes: { ...outing.notes, teeShots } }, 1)).toEqual([null])
  })

  it('is settled hole by hole', () => {
    const [settled, ...others] = settledWith({ ...foursomes, teeShots: [first] }).teeShots
    expect(others).toEqual([])
    expect(settled).toMatchObject({ ball: 'ab' })
    expect(settled?.holes.slice(0, 2)).toEqual([
      { hole: 1, lap: 1, player: 'alder' },
      { hole: 2, lap: 1, player: 'birch' },
    ])
    expect(settled?.holes).toHaveLength(autumnDay.length)
  })
})
