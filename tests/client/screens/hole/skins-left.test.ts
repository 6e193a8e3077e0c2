import { describe, expect, test } from 'vitest'
import { skinsLeftFacts } from '#client/screens/games/game-acts.ts'
import { skinsAtEnd } from '#client/screens/hole/skins-left.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { must } from '#core/values/assert.ts'
import type { GroupId } from '#core/values/ids.ts'
import { autumnDay, type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const all = autumnDay.players.map(({ id }) => [id])
const game = { id: 'skins', format: 'skins-gross', sides: all }
const level = autumnDay.players.map(({ id }) => ({ ball: id, holes: Array(18).fill(5) }))

function leftAt(hole: number, change: Change = {}, methods: object = {}) {
  const outing = outingOfPlain(plainWith({ games: [{ ...game, ...methods }], main: 'skins', scores: level, ...change }))
  return skinsAtEnd(outing, resultsOf(outing), must(outing.groups.get('four' as GroupId), 'the group'), {
    hole,
    lap: 1,
  })
}

describe('skins that wait after the last hole', () => {
  test('are asked about there, and nowhere before', () => {
    expect(leftAt(18)?.skins).toBe(18)
    expect(leftAt(17)).toBeNull()
  })

  test('are not asked about once they are won, shared out, or where none carries', () => {
    const [first, ...others] = level
    const last = { ball: first?.ball, holes: [...Array(17).fill(5), 4] }
    expect(leftAt(18, { scores: [last, ...others] })).toBeNull()
    expect(leftAt(18, {}, { skinsLeft: 'shared-out' })).toBeNull()
    expect(leftAt(18, {}, { skins: 'no-carry-over' })).toBeNull()
  })

  test('are no one group’s to decide where a side of another plays for them', () => {
    const groups = [
      { id: 'four', name: 'One', balls: ['alder', 'birch'] },
      { id: 'two', name: 'Two', balls: ['cedar', 'rowan'] },
    ]
    expect(leftAt(18, { groups })).toBeNull()
  })

  test('go by one setting of the game', () => {
    const left = must(leftAt(18), 'skins are left')
    expect(skinsLeftFacts(left.game, 'play-on')).toEqual([{ key: 'game/skins/skins-left', value: 'play-on' }])
    expect(skinsLeftFacts(left.game, 'unclaimed')).toEqual([])
  })
})
