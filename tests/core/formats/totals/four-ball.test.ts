import { describe, expect, it } from 'vitest'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { ball, hole, type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'
import { cardOf, lineOf, totalGame, valuesOf } from '#tests/kit/total-games.ts'

const pars: readonly number[] = quillmoor.pars
const pair = [['A', 'B']]

const only = (game: Partial<PlayedGame> & Pick<PlayedGame, 'format' | 'scores'>) => {
  const result = resultOf('total', { sides: pair, ...game, methods: { allowancePercent: 100, ...game.methods } })
  const [line] = result.lines
  if (line === undefined) throw new Error('no line')
  return line
}

type Line = ReturnType<typeof only>
const at = (line: Line, number: number) => line.byHole.get(hole(number))
const valueAt = (line: Line, number: number) => {
  const found = at(line, number)
  return found?.kind === 'value' ? found.value : null
}

describe('four-ball totals', () => {
  // Practice case FB-02: rule 23.2 with 85 per cent of unrounded course handicaps.
  it('add the better ball up: 39 points of 33 and 25', () => {
    const tee = { id: 'white', name: 'White', ratings: { courseRating: 72, slope: 113, par: 72 } }
    const players = autumnDay.players.map((player, place) => ({
      ...player,
      handicap: { index: [10.2, 20.4][place] ?? 0 },
    }))
    const x = 'picked-up'
    const scores = [
      cardOf('alder', [5, 5, 3, 5, 5, 4, 4, 6, x, 5, 4, 3, 6, 5, 4, 3, 5, 5]),
      cardOf('birch', [5, 7, 4, 5, x, 4, 6, 6, 5, 6, 6, 4, x, 6, 5, 4, 7, 5]),
    ]
    const change = { players, course: { ...autumnDay.course, tees: [tee] } }
    const game = totalGame('four-ball-stableford', [['alder', 'birch']], scores, { allowance: 85 }, change)
    expect(game.strokes.map(({ playingHandicap }) => playingHandicap)).toEqual([9, 17])
    expect(valuesOf(lineOf(game, 'alder'))).toEqual([2, 3, 2, 2, 2, 2, 3, 2, 2, 2, 3, 2, 1, 2, 2, 2, 3, 2])
    expect(lineOf(game, 'alder').total).toBe(39)
    const alone = totalGame('stableford', [['alder'], ['birch']], scores, { allowance: 85 }, change)
    expect(alone.lines.map(({ total }) => total)).toEqual([33, 25])
  })

  it.each([
    ['four-ball-stroke-play', 85],
    ['four-ball-stableford', 85],
    ['four-ball-par-bogey', 90],
  ])('%s proposes %i per cent (Rules of Handicapping 2024, Appendix C)', (format, percent) => {
    const players = autumnDay.players.map(player => ({ ...player, handicap: { courseHandicap: 20 } }))
    const game = totalGame(format, [['alder', 'birch']], [], { allowance: undefined }, { players })
    expect(game.settings.allowance).toBe(percent)
    expect(game.strokes[0]?.playingHandicap).toBe((20 * percent) / 100)
  })

  // Practice case FB-01, clarification 23.2b/1: only the score shown against a partner counts, off that partner's strokes.
  it('count the score of the partner whose it is', () => {
    const scores = { A: Array.from({ length: 10 }, (_, place) => (place === 9 ? 4 : null)), B: [] }
    const handicaps = { A: 0, B: 8 }
    const strokes = only({ format: 'four-ball-stroke-play', scores, handicaps })
    expect(at(strokes, 10)).toEqual({ kind: 'value', value: 4, level: 4, balls: ['A'] })
    expect(valueAt(only({ format: 'four-ball-stableford', scores, handicaps }), 10)).toBe(2)
  })

  // Practice case FB-03, rule 23.4.
  it('count a late partner only from the hole joined, whatever was written before', () => {
    const fromPoints = (points: readonly (number | null)[]): Written[] =>
      points.map((each, place) => (each === null ? null : (pars[place] ?? 4) + 2 - each))
    const absence = { ball: ball('B'), joinedAt: hole(3), leftAt: null, isWithdrawn: false, reason: null }
    const line = only({
      format: 'four-ball-stableford',
      scores: { A: fromPoints([2, 1, 2, 2]), B: fromPoints([null, 3, 3, 1]) },
      happenings: { absences: new Map([[ball('B'), absence]]) },
    })
    expect([1, 2, 3, 4].map(number => valueAt(line, number))).toEqual([2, 1, 3, 2])
    expect(line.notes.get(hole(2))).toEqual([{ code: 'absent', ball: 'B' }])
    expect(line.notes.has(hole(3))).toBe(false)
  })

  // Practice case MP-10, rule 23.2a.
  it('need one ball holed alone', () => {
    const line = only({
      format: 'four-ball-stroke-play',
      handicaps: { B: 18 },
      scores: { A: ['picked-up', 4], B: [5, 'picked-up'] },
    })
    expect([valueAt(line, 1), valueAt(line, 2)]).toEqual([4, 4])
    expect(line).toMatchObject({ isNoReturn: false, through: 2 })
  })

  // Rules 23.2 (stroke play), 21.1b and 21.3 for a side without a score.
  it.each([
    ['four-ball-stroke-play', null, { kind: 'none' }],
    ['four-ball-stableford', 0, { kind: 'value', value: 0 }],
    ['four-ball-par-bogey', -1, { kind: 'value', value: -1 }],
  ] as const)('with no ball holed, %s comes to %s', (format, total, value) => {
    const line = only({ format, scores: { A: ['picked-up'], B: ['not-played'] } })
    expect(at(line, 1)).toMatchObject(value)
    expect([line.total, line.isNoReturn]).toEqual([total, total === null])
  })

  it.each(['four-ball-stroke-play', 'four-ball-stableford', 'four-ball-par-bogey'] as const)(
    '%s waits for the partner who may still hole',
    format => {
      expect(at(only({ format, scores: { A: ['picked-up'], B: [] } }), 1)).toEqual({ kind: 'open' })
    },
  )

  it('leave two scores open only where they would change the side', () => {
    const line = only({
      format: 'four-ball-stableford',
      scores: {
        A: [
          [4, 7],
          [5, 7],
        ],
        B: [3, 6],
      },
    })
    expect(at(line, 1)).toMatchObject({ kind: 'value', value: 3, balls: ['B'] })
    expect(at(line, 2)).toEqual({ kind: 'two', values: [2, 1] })
    expect(line.unsettled).toEqual([hole(1), hole(2)])
  })
})
