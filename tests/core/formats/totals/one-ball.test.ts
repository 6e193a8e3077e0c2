import { describe, expect, it } from 'vitest'
import type { FormatName } from '#core/formats/format-names.ts'
import type { PlayerId } from '#core/values/ids.ts'
import { gameIn, settledWith } from '#tests/kit/plain-outing.ts'
import { ball, hole, resultOf } from '#tests/kit/played-game.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'
import { playersWith } from '#tests/kit/total-games.ts'

const pars: readonly number[] = quillmoor.pars

const strokesOf = (format: FormatName, ...handicaps: number[]) =>
  resultOf('total', { format, sides: [['team']], handicaps: { team: handicaps }, scores: { team: [] } }).strokes.get(
    ball('team'),
  )

// Rules of Handicapping 2024, Appendix C: shares of the Course Handicaps, the lowest first, rounded once.
describe('one ball of several players', () => {
  it.each([
    ['foursomes-stroke-play', [14, 7], 11],
    ['foursomes-stableford', [4, 7], 6],
    // Practice case MP-15: 5.6 and 8.0.
    ['greensomes-stroke-play', [8, 4], 6],
    ['greensomes-stableford', [6, 11], 8],
    ['chapman-stroke-play', [11, 6], 8],
    ['chapman-stableford', [-2, 10], 3],
    ['scramble-stroke-play', [20, 10], 7],
    // Practice case TM-05: 8.4 and 12.05.
    ['scramble-stroke-play', [26, 8, 17], 8],
    ['scramble-stroke-play', [10, 28, 15, 25], 12],
  ] as const)('%s of %j gets %i', (format, handicaps, expected) => {
    expect(strokesOf(format, ...handicaps)?.strokes).toBe(expected)
  })

  it('rounds course handicaps first where the game says so', () => {
    // 50 per cent of 4.6 and 7.6 is 6.1; of 5 and 8 it is 6.5.
    const tee = { id: 'white', name: 'White', ratings: { courseRating: 72, slope: 113, par: 72 } }
    const strokes = (rounding: string) =>
      gameIn(
        settledWith({
          players: playersWith({ index: 4.6 }, { index: 7.6 }),
          balls: [{ id: 'pair', players: ['alder', 'birch'] }],
          groups: [{ id: 'four', name: 'Group', balls: ['pair'] }],
          course: {
            name: 'Quillmoor',
            holes: pars.map((par, at) => ({ par, index: quillmoor.indexes[at] ?? 1 })),
            tees: [tee],
          },
          games: [{ id: 'g', format: 'foursomes-stroke-play', sides: [['pair']], rounding }],
          main: undefined,
          scores: [],
        }),
        'g',
        'total',
      ).strokes[0]
    expect(strokes('course-handicap-unrounded')).toMatchObject({ courseHandicap: { unrounded: '6.1' }, strokes: 6 })
    expect(strokes('course-handicap-rounded-first')).toMatchObject({ courseHandicap: { unrounded: '6.5' }, strokes: 7 })
  })

  it('lets teams of two, three and four play one scramble', () => {
    const result = resultOf('total', {
      format: 'scramble-stroke-play',
      sides: [['two'], ['three'], ['four']],
      handicaps: { two: [10, 20], three: [8, 17, 26], four: [10, 15, 25, 28] },
      scores: { two: pars, three: pars.map(par => par + 1), four: pars.slice(0, 3) },
    })
    expect([...result.strokes.values()].map(({ strokes }) => strokes)).toEqual([7, 8, 12])
    expect(result.lines.map(({ side, overPar }) => [side[0], overPar])).toEqual([
      ['two', -7],
      ['four', -2],
      ['three', 10],
    ])
  })

  it('names the ball where a player lacks a handicap, and plays the others', () => {
    const players = playersWith({ courseHandicap: 4 }, { courseHandicap: 8 }, { index: 10 }, { courseHandicap: 6 })
    const balls = [
      { id: 'ab', players: ['alder', 'birch'] },
      { id: 'cr', players: ['cedar', 'rowan'] },
    ]
    const settled = settledWith({
      players,
      balls,
      groups: [{ id: 'four', name: 'Group', balls: ['ab', 'cr'] }],
      games: [{ id: 'g', format: 'greensomes-stableford', sides: [['ab'], ['cr']] }],
      main: undefined,
      scores: [{ ball: 'ab', holes: pars }],
    })
    const game = gameIn(settled, 'g', 'total')
    expect(game.gaps).toEqual([{ code: 'rating missing', ball: 'cr', setting: '' }])
    expect(game.lines.map(({ side, total }) => [side[0], total])).toEqual([['ab', 42]])
  })

  it.each([
    ['foursomes-stroke-play', [4, 7, 9]],
    ['scramble-stroke-play', [4]],
    ['stableford', [4, 7]],
  ] as const)('%s is no game for a ball of %j', (format, handicaps) => {
    const { gaps } = resultOf('gap', { format, sides: [['team']], handicaps: { team: handicaps }, scores: {} })
    expect(gaps).toEqual([{ code: 'wrong sides', ball: 'team', setting: '' }])
  })

  // A count of each player's drives is asked for by terms of scrambles: practice.md, 1.7; common practice.
  it("counts whose drives were used, and none on a hole that is not the round's", () => {
    const used = ['team0', 'team2', 'team0'].map((player, place) => [hole(place + 1), player as PlayerId] as const)
    const [line] = resultOf('total', {
      format: 'scramble-stroke-play',
      sides: [['team'], ['other']],
      handicaps: { team: [1, 2, 3], other: [4, 5] },
      scores: {},
      happenings: { drives: new Map([[ball('team'), new Map([...used, [hole(1, 2), 'team1' as PlayerId]])]]) },
    }).lines
    expect(line?.drives.map(({ player, count }) => [player, count])).toEqual([
      ['team0', 2],
      ['team1', 0],
      ['team2', 1],
    ])
  })
})
