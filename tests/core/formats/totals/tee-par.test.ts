import { describe, expect, it } from 'vitest'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { cardOf, lineOf, pars, totalGame } from '#tests/kit/total-games.ts'

/** The first hole is a par five from the back tee: 73 against 72. */
const longer = [5, ...pars.slice(1)]
const course = {
  ...autumnDay.course,
  tees: [
    { id: 'back', name: 'Back', pars: longer },
    { id: 'white', name: 'White' },
  ],
}
const playersOff = (handicap: object) =>
  autumnDay.players.map((player, place) => ({ ...player, tee: place === 0 ? 'back' : 'white', handicap }))
const change = { course, players: playersOff({ courseHandicap: 10 }) }
const two = [['alder'], ['birch']]
const scores = [cardOf('alder', longer), cardOf('birch', pars)]

// Rules of Handicapping, rule 6.2b, with Course Handicaps that hold rating minus par; USGA and R&A; 2020 and 2024.
describe('tees of different par', () => {
  it.each(['stroke-play-net', 'maximum-score-net'])('%s adds the difference to the playing handicap', format => {
    const game = totalGame(format, two, scores, { ties: undefined }, change)
    expect(
      game.strokes.map(({ playingHandicap, strokes, forTeePar }) => [playingHandicap, strokes, forTeePar]),
    ).toEqual([
      [11, 11, 1],
      [10, 10, 0],
    ])
    expect([lineOf(game, 'alder').total, lineOf(game, 'birch').total]).toEqual([62, 62])
  })

  it.each(['stableford', 'par-bogey'])('%s has par for its target on every tee', format => {
    const game = totalGame(format, two, scores, {}, change)
    expect(game.strokes.map(({ strokes, forTeePar }) => [strokes, forTeePar])).toEqual([
      [10, 0],
      [10, 0],
    ])
    expect(game.lines.map(({ place }) => place)).toEqual([1, 1])
  })

  it('leaves plain strokes as they were agreed', () => {
    const game = totalGame('stroke-play-net', two, scores, {}, { ...change, players: playersOff({ strokes: 10 }) })
    expect(game.strokes.map(({ strokes }) => strokes)).toEqual([10, 10])
    expect([lineOf(game, 'alder').total, lineOf(game, 'birch').total]).toEqual([63, 62])
    expect([lineOf(game, 'alder').overPar, lineOf(game, 'birch').overPar]).toEqual([-9, -10])
  })

  it('compares a round under way by what it is against its own par', () => {
    const running = [cardOf('alder', [...longer.slice(0, 9)]), cardOf('birch', pars)]
    const game = totalGame(
      'stroke-play-net',
      two,
      running,
      {},
      { ...change, players: playersOff({ courseHandicap: 0 }) },
    )
    expect(game.strokes[0]?.strokes).toBe(1)
    expect(game.lines.map(({ overPar, place }) => [overPar, place])).toEqual([
      [0, 1],
      [0, 1],
    ])
  })

  it('changes nothing where everybody has one par', () => {
    const one = { ...change, players: change.players.map(player => ({ ...player, tee: 'back' })) }
    expect(totalGame('stroke-play-net', two, scores, {}, one).strokes.map(({ forTeePar }) => forTeePar)).toEqual([0, 0])
  })

  // The two practices of club pages, 2024, second-hand; standards.md, section b.
  it.each([
    // Alder's tee for the ball: 10 + (72 - 73) for Birch; half of 19 is 9.5, and a par more than the other ball's.
    ['foursomes-stroke-play', 'one-tee-par', '9.5', [11, 1]],
    // Each own par, the one more of Alder's into the shares: half of 21.
    ['foursomes-stroke-play', 'par-difference-in-shares', '10.5', [11, 0]],
    ['foursomes-stableford', 'one-tee-par', '9.5', [10, 0]],
    ['foursomes-stableford', 'par-difference-in-shares', '10', [10, 0]],
  ] as const)('%s by %s takes %s', (format, mixedTees, unrounded, expected) => {
    const balls = [
      { id: 'ab', players: ['alder', 'birch'] },
      { id: 'cr', players: ['cedar', 'rowan'] },
    ]
    const groups = [{ id: 'four', name: 'Group', balls: ['ab', 'cr'] }]
    const game = totalGame(format, [['ab'], ['cr']], [], { mixedTees }, { ...change, balls, groups })
    expect(game.strokes[0]?.courseHandicap?.unrounded).toBe(unrounded)
    expect([game.strokes[0]?.strokes, game.strokes[0]?.forTeePar]).toEqual(expected)
    expect(game.strokes[1]?.strokes).toBe(10)
  })
})
