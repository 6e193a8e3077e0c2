import { describe, expect, it } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import { toNumber } from '#core/values/fraction.ts'
import { ball, hole, type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'

const ids = ['alder', 'birch', 'cedar'] as const

/** Scores by hole, one a player. */
const skins = (byHole: readonly (readonly Written[])[], more: Partial<PlayedGame> = {}) =>
  resultOf('shares', {
    format: 'skins',
    sides: ids.map(id => [id]),
    scores: Object.fromEntries(ids.map((id, at) => [id, byHole.map(scores => scores[at] ?? null)])),
    round: roundFrom(1, 9),
    ...more,
  })

const totals = (result: ReturnType<typeof skins>) =>
  ids.map(id => toNumber(result.lines.find(({ side }) => side[0] === id)?.total ?? { numerator: -1, denominator: 1 }))

const tied = [4, 4, 4]

// Common practice; no body publishes it.
describe('skins', () => {
  it('carry a tied hole on, and leave what nobody won unclaimed at the end', () => {
    const result = skins([tied, [5, 4, 5], tied, tied, [3, 4, 4], tied, [5, 5, 3], tied, tied])
    expect(totals(result)).toEqual([3, 2, 2])
    expect([result.carried, result.unclaimed, result.isFinished]).toEqual([0, 2, true])
    expect(result.holes.map(({ kind, pot }) => [kind, pot]).slice(0, 5)).toEqual([
      ['carried', 1],
      ['shared', 2],
      ['carried', 1],
      ['carried', 2],
      ['shared', 3],
    ])
    expect(result.lines.map(({ side, place, isTied }) => [side[0], place, isTied])).toEqual([
      ['alder', 1, false],
      ['birch', 2, true],
      ['cedar', 2, true],
    ])
  })

  it('lose a tied hole where nothing carries', () => {
    const result = skins([tied, [5, 4, 5], tied], { methods: { skins: 'no-carry-over' } })
    expect(totals(result)).toEqual([0, 1, 0])
    expect([result.carried, result.unclaimed, result.holes[2]?.kind]).toEqual([0, 2, 'unclaimed'])
  })

  it('shows the pot that lies on the next hole', () => {
    expect(skins([tied, tied]).carried).toBe(2)
    expect(skins([]).lines.map(({ place }) => place)).toEqual([null, null, null])
  })

  const allTied = Array.from({ length: 9 }, () => tied)
  const extra = [1, 2].map(number => ({ hole: number, lap: 2 }))
  const over = (last: readonly (readonly Written[])[], skinsLeft: 'play-on' | 'shared-out' | 'unclaimed' | null) =>
    skins([...allTied, ...last], { extra, methods: { skinsLeft } })

  it('are played for over extra holes where the game says so, which add none of their own', () => {
    const result = over([tied, [4, 3, 4]], 'play-on')
    expect([totals(result), result.unclaimed, result.isFinished]).toEqual([[0, 9, 0], 0, true])
    expect(result.holes.slice(8).map(({ key, kind, pot }) => [key, kind, pot])).toEqual([
      ['9/1', 'carried', 9],
      ['1/2', 'carried', 9],
      ['2/2', 'shared', 9],
    ])
    const won = over(
      [
        [3, 4, 4],
        [4, 3, 4],
      ],
      'play-on',
    )
    expect([totals(won), won.holes.length]).toEqual([[9, 0, 0], 10])
    const open = over([], 'play-on')
    expect([open.carried, open.unclaimed, open.isFinished]).toEqual([9, 0, false])
    expect(skins(allTied, { methods: { skinsLeft: 'play-on' } }).unclaimed).toBe(9)
  })

  it('need no extra hole where nothing waits', () => {
    const won = [...allTied.slice(1), [3, 4, 4]]
    const result = skins([...won, [4, 3, 4]], { extra, methods: { skinsLeft: 'play-on' } })
    expect([totals(result), result.holes.length, result.isFinished]).toEqual([[9, 0, 0], 9, true])
  })

  it('are shared out alike where the game says so, once every hole is known', () => {
    const result = over([], 'shared-out')
    expect([totals(result), result.sharedOut, result.unclaimed]).toEqual([[3, 3, 3], 9, 0])
    expect(skins(allTied.slice(1), { methods: { skinsLeft: 'shared-out' } }).sharedOut).toBe(0)
  })

  it.each(['unclaimed', null] as const)('are nobody’s where the game says %s, whatever extra holes there are', left => {
    const result = over([[3, 4, 4]], left)
    expect([totals(result), result.unclaimed, result.holes.length]).toEqual([[0, 0, 0], 9, 9])
  })

  it('an open hole makes a later winner wait, and no longer than to the hole that is won', () => {
    const result = skins([tied, [[3, 5], 4, 4], [3, 4, 4], [3, 4, 4], [3, 4, 4]])
    expect(result.holes.slice(0, 4).map(({ kind, pot }) => [kind, pot])).toEqual([
      ['carried', 1],
      ['open', 2],
      ['waiting', null],
      ['shared', 1],
    ])
    expect([totals(result), result.unsettled]).toEqual([[2, 0, 0], [hole(2)]])
    expect(skins([tied, [null, 4, 4], tied]).carried).toBeNull()
  })

  it('two scores that would share the hole alike leave nothing open', () => {
    expect(skins([[[5, 6], 4, 3]]).holes[0]).toMatchObject({ kind: 'shared' })
  })

  it('no carry-over leaves an open hole open alone', () => {
    const result = skins(
      [
        [null, 4, 4],
        [3, 4, 4],
      ],
      { methods: { skins: 'no-carry-over' } },
    )
    expect(result.holes.slice(0, 2).map(({ kind }) => kind)).toEqual(['open', 'shared'])
  })

  it("go by each one's own strokes, and gross by none", () => {
    const game = { handicaps: { cedar: 9 } }
    // A stroke on each of the nine: 4 and 5 level, and the third player's 5 is 4.
    expect(skins([[5, 5, 5]], game).holes[0]).toMatchObject({ kind: 'shared' })
    expect(skins([[5, 5, 5]], { ...game, format: 'skins-gross' }).holes[0]).toMatchObject({ kind: 'carried' })
  })

  it('leave out a hole out of play, and tie one that counts net par', () => {
    const out = (counts: 'nothing' | 'net-par') =>
      skins(
        [
          [3, 4, 4],
          [3, 4, 4],
        ],
        { happenings: { holesOut: new Map([[hole(1), { counts, reason: null }]]) } },
      )
    expect(out('nothing').holes).toHaveLength(8)
    expect(totals(out('net-par'))).toEqual([2, 0, 0])
  })

  it('add a penalty to the score, and take a ball that left as picked up', () => {
    const penalty = { ball: ball('alder'), hole: hole(1), strokes: 2, holeLost: false, reason: null }
    expect(totals(skins([[3, 4, 5]], { happenings: { penalties: [penalty] } }))).toEqual([0, 1, 0])
    const absence = { ball: ball('alder'), joinedAt: null, leftAt: hole(1), isWithdrawn: false, reason: null }
    const absences = new Map([[ball('alder'), absence]])
    expect(totals(skins([[null, 4, 5]], { happenings: { absences } }))).toEqual([0, 1, 0])
  })
})
