import { describe, expect, it } from 'vitest'
import { formatMatchLine, formatMatchState } from '#core/formats/match-text.ts'
import { card, line, singles } from '#tests/kit/match-lines.ts'
import { ball, hole, type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'

describe('concessions', () => {
  it('a stroke conceded makes the score of this match alone', () => {
    const happenings = { strokeConcessions: [{ ball: ball('alder'), hole: hole(1), score: 4 }] }
    const found = singles(card({ 1: 'picked-up' }, 1), card({ 1: 1 }, 1), { happenings })
    expect(found.holes[0]).toMatchObject({ result: 1, reason: 'lower' })
  })

  it('a hole conceded is lost whatever is written', () => {
    const happenings = { holeConcessions: [{ by: ball('birch'), to: null, hole: hole(1) }] }
    const found = singles(card({ 1: 2 }, 1), card({ 1: 'picked-up' }, 1), { happenings })
    expect(found.holes[0]).toMatchObject({ result: 1, reason: 'conceded', balls: ['birch'] })
    expect(singles([], [], { happenings }).holes[0]).toMatchObject({ result: 1 })
  })

  it('one of a hole that both had holed out otherwise is void, and listed', () => {
    const happenings = { holeConcessions: [{ by: ball('birch'), to: ball('alder'), hole: hole(1) }] }
    const found = singles(card({ 1: 1 }, 1), card({}, 1), { happenings })
    expect(found.holes[0]).toMatchObject({ result: -1, reason: 'lower' })
    expect(found.voids).toEqual([{ hole: hole(1), by: 'birch', reason: 'hole-already-decided' }])
  })

  it('of both sides leave the hole open', () => {
    const holeConcessions = ['alder', 'birch'].map(id => ({ by: ball(id), to: null, hole: hole(1) }))
    const found = singles([], [], { happenings: { holeConcessions } })
    expect(found.holes[0]).toMatchObject({ result: { two: [1, -1] }, reason: null })
    expect(found.unsettled).toEqual([hole(1)])
  })

  it('a match conceded is over, and stands as it stood', () => {
    const happenings = { matchConcessions: [{ by: ball('alder'), to: null }] }
    const found = singles(card({ 1: -1 }, 6), card({}, 6), { happenings })
    expect(found).toMatchObject({ decidedBy: 'conceded', state: { winner: 'B', leader: 'A', lead: 1 } })
    expect([formatMatchState(found.state), formatMatchLine(found.state)]).toEqual(['conceded', 'won by concession'])
  })

  it('of the match by both sides decide nothing', () => {
    const matchConcessions = ['alder', 'birch'].map(id => ({ by: ball(id), to: null }))
    expect(singles([], [], { happenings: { matchConcessions } }).decidedBy).toBeNull()
  })

  it('to one of three concern that match alone', () => {
    const found = resultOf('match', {
      format: 'three-ball-match',
      sides: [['alder'], ['birch'], ['cedar']],
      scores: {},
      happenings: { matchConcessions: [{ by: ball('alder'), to: ball('cedar') }] },
    })
    expect(found.matches.map(({ decidedBy }) => decidedBy)).toEqual([null, 'conceded', null])
  })
})

// Rules of Golf, rule 3.2d(3); R&A and USGA; 2023.

describe('what the sides agreed', () => {
  const between = [ball('alder'), ball('birch')] as const

  it('a hole stands over the scores', () => {
    const found = singles(card({ 7: -1 }), card(), {
      happenings: { agreedHoles: [{ hole: hole(7), between, won: null }] },
    })
    expect(found.holes[6]).toMatchObject({ result: 0, reason: 'agreed' })
    expect(formatMatchLine(found.state)).toBe('halved')
  })

  // Rules of Golf, clarification 23.2a/1: the side last to pick up wins; cannot come from four blanks.
  it('gives a hole that nobody finished to the side that gave up last', () => {
    const won = { hole: hole(1), between, won: ball('birch') }
    const found = singles(card({ 1: 'picked-up' }), card({ 1: 'picked-up' }), { happenings: { agreedHoles: [won] } })
    expect(found.holes[0]).toMatchObject({ result: -1, reason: 'agreed' })
  })

  it('makes a concession that says otherwise void', () => {
    const found = singles(card(), card(), {
      happenings: {
        agreedHoles: [{ hole: hole(1), between, won: null }],
        holeConcessions: [{ by: ball('alder'), to: null, hole: hole(1) }],
      },
    })
    expect(found.voids).toEqual([{ hole: hole(1), by: 'alder', reason: 'agreed-otherwise' }])
  })

  it('told in two ways leaves the hole open', () => {
    const agreedHoles = [ball('birch'), null].map(won => ({ hole: hole(1), between, won }))
    const found = singles(card(), card(), { happenings: { agreedHoles } })
    expect(found.holes[0]?.result).toEqual({ two: [0, -1] })
    expect(found.decidedBy).toBeNull()
  })

  it.each([
    [{ won: ball('birch'), by: 3, left: 2 }, 'won 3 & 2', 'B'],
    [{ won: ball('alder'), by: 1, left: 0 }, 'won 1 up', 'A'],
    [{ won: null, by: 0, left: 0 }, 'halved', null],
    [{ won: ball('alder'), by: 0, left: 0 }, 'won by agreement', 'A'],
  ])('a result stands over everything: %j', (result, text, winner) => {
    const found = singles(card({ 1: -1 }), card(), {
      happenings: {
        agreedResults: [{ between, ...result }],
        matchConcessions: [{ by: ball('alder'), to: null }],
      },
    })
    expect([formatMatchLine(found.state), found.state.winner, found.decidedBy]).toEqual([text, winner, 'agreed'])
  })

  it('results that differ stand for nothing', () => {
    const agreedResults = [1, 2].map(by => ({ between, won: ball('birch'), by, left: 0 }))
    expect(singles(card({ 1: -1 }), card(), { happenings: { agreedResults } })).toMatchObject({
      decidedBy: 'play',
      state: { winner: 'A' },
    })
  })
})

describe('rulings in a match', () => {
  const penalty = (id: string, at: number | null) => ({
    ball: ball(id),
    hole: at === null ? null : hole(at),
    strokes: 0,
    holeLost: true,
    reason: null,
  })
  const out = (id: string, at: number | null) => ({ ball: ball(id), hole: at === null ? null : hole(at), reason: null })

  it('a penalty loses the hole; of both sides it halves it', () => {
    const found = singles(card({ 1: -1 }), card(), {
      happenings: { penalties: [penalty('alder', 1), penalty('alder', 2), penalty('birch', 2)] },
    })
    expect(found.holes.slice(0, 2).map(({ result, reason }) => [result, reason])).toEqual([
      [-1, 'penalty'],
      [0, 'penalty'],
    ])
  })

  it('makes a concession to the side that lost the hole void', () => {
    const found = singles(card({}, 1), card({}, 1), {
      happenings: {
        penalties: [penalty('alder', 1)],
        holeConcessions: [{ by: ball('birch'), to: null, hole: hole(1) }],
      },
    })
    expect(found.holes[0]).toMatchObject({ result: -1, reason: 'penalty' })
    expect(found.voids).toHaveLength(1)
  })

  // Rules of Golf, rule 4.1b(4), from memory: the match is adjusted by a hole.
  it('a hole off the match as a whole moves its state alone', () => {
    const found = singles(card({}, 6), card({}, 6), { happenings: { penalties: [penalty('birch', null)] } })
    expect(formatMatchLine(found.state)).toBe('1 up, 12 to play')
    expect(found.holes[0]?.result).toBe(0)
  })

  it('a side disqualified loses the match, and both lose it', () => {
    const of = (...ids: string[]) =>
      singles(card({ 1: -1 }), card(), { happenings: { disqualified: ids.map(id => out(id, null)) } })
    expect(of('alder')).toMatchObject({ decidedBy: 'disqualified', state: { winner: 'B' } })
    expect(formatMatchLine(of('alder', 'birch').state)).toBe('both disqualified')
    expect(of('alder', 'birch').state.winner).toBeNull()
  })

  // Rules of Golf, rule 23.8: a partner may be out of one hole.
  it('a partner out of a hole leaves it to the other', () => {
    const found = line({
      format: 'four-ball-match',
      sides: [
        ['alder', 'cedar'],
        ['birch', 'rowan'],
      ],
      scores: { alder: card({ 1: -1 }), cedar: card(), birch: card(), rowan: card() },
      happenings: { disqualified: [out('alder', 1)] },
    })
    expect(found.holes[0]).toMatchObject({ result: 0, reason: 'level', balls: ['cedar', 'birch', 'rowan'] })
  })

  it.each([
    ['nothing', null, 'won 2 & 1'],
    ['net-par', 0, 'won 2 & 1'],
  ] as const)('a hole out of play that counts %s', (counts, result, text) => {
    const happenings = { holesOut: new Map([[hole(3), { counts, reason: null }]]) }
    const found = singles(card({ 1: -1, 2: -1, 3: -1 }, 17), card({}, 17), { happenings })
    expect(found.holes[2]).toMatchObject({ result, reason: 'out-of-play' })
    expect(formatMatchLine(found.state)).toBe(text)
  })

  it('a hole out of play makes the match one shorter', () => {
    const happenings = { holesOut: new Map([[hole(3), { counts: 'nothing', reason: null } as const]]) }
    expect(formatMatchLine(singles(card({}, 4), card({}, 4), { happenings }).state)).toBe('all square, 14 to play')
  })
})

describe('absence', () => {
  const from = (id: string, leftAt: number | null, joinedAt: number | null = null) =>
    new Map([
      [
        ball(id),
        {
          ball: ball(id),
          joinedAt: joinedAt === null ? null : hole(joinedAt),
          leftAt: leftAt === null ? null : hole(leftAt),
          isWithdrawn: false,
          reason: null,
        },
      ],
    ])
  const fourBall = (more: Partial<PlayedGame>) =>
    line({
      format: 'four-ball-match',
      sides: [
        ['alder', 'birch'],
        ['cedar', 'rowan'],
      ],
      methods: { allowancePercent: 100 },
      scores: {},
      ...more,
    })

  // Rules of Golf, rule 23.4 and 23.4/1: the absent partner's handicap still sets the low mark.
  it('a side goes on with one ball, its strokes unchanged', () => {
    const found = fourBall({
      handicaps: { alder: 0, birch: 4, cedar: 2, rowan: 6 },
      scores: {
        birch: card({ 10: 1, 11: 1, 14: 0 }),
        cedar: card({ 10: 0, 11: 1, 14: 0 }),
        rowan: card({ 10: 1, 11: 2, 14: 2 }),
      },
      happenings: { absences: from('alder', 10) },
    })
    expect(['birch', 'cedar', 'rowan'].map(id => found.strokes.get(ball(id))?.strokes)).toEqual([4, 2, 6])
    expect([10, 11, 14].map(at => found.holes[at - 1]?.result)).toEqual([-1, 1, 0])
  })

  it('a partner may join between holes', () => {
    const found = fourBall({
      scores: { alder: card({ 1: -1, 2: -1 }), birch: card(), cedar: card(), rowan: card() },
      happenings: { absences: from('alder', null, 2) },
    })
    expect(found.holes.slice(0, 2).map(({ result }) => result)).toEqual([0, 1])
  })

  it('a singles side that leaves gives the match up, unless it was over', () => {
    const left = (alder: Written[], leftAt: number) =>
      singles(alder, card({}, leftAt - 1), { happenings: { absences: from('alder', leftAt) } })
    expect(left(card({ 1: -1 }, 9), 10)).toMatchObject({ decidedBy: 'conceded', state: { winner: 'B', lead: 1 } })
    const over = left(card({ 1: -1, 2: -1, 3: -1 }, 16), 17)
    expect([over.decidedBy, formatMatchLine(over.state)]).toEqual(['play', 'won 3 & 2'])
  })

  it('a side that never came gives it up from the start', () => {
    const found = singles([], [], { happenings: { absences: from('birch', null) } })
    expect(found).toMatchObject({ decidedBy: 'conceded', state: { winner: 'A', holesPlayed: 0 } })
  })
})
