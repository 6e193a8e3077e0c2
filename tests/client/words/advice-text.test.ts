import { describe, expect, test } from 'vitest'
import { textOfFigures } from '#client/words/advice-text.ts'
import type { HabitFigures } from '#core/plan/advice/habit-figures.ts'

const ways = { habit: 'The middle', other: 'The flag' }
const figuresWith = (change: Partial<HabitFigures>): HabitFigures => ({
  perTenShots: 0.64,
  least: 0.51,
  most: 0.92,
  verdict: 'slightly',
  habitIsBetter: true,
  restsOn: null,
  ...change,
})

describe('what figures say of a habit', () => {
  test('names the better way, what it saves and the range', () => {
    expect(textOfFigures(figuresWith({}), ways)).toEqual({
      answer: 'The middle: slightly better',
      lines: ['It saves about 0.6 strokes in ten such shots (0.5 to 0.9).'],
    })
  })

  test('tells the other way from its own side, the smaller figure first', () => {
    const figures = figuresWith({
      perTenShots: -4.6,
      least: -4.8,
      most: -4.4,
      verdict: 'clearly',
      habitIsBetter: false,
    })
    expect(textOfFigures(figures, ways)).toEqual({
      answer: 'The flag: clearly better',
      lines: ['It saves about 4.6 strokes in ten such shots (4.4 to 4.8).'],
    })
  })

  test('gives no range where it is one figure', () => {
    expect(textOfFigures(figuresWith({ least: 0.61, most: 0.64 }), ways).lines).toEqual([
      'It saves about 0.6 strokes in ten such shots, however they scatter.',
    ])
  })

  test('promises nothing of a difference too small, nor of one that turns', () => {
    const small = textOfFigures(figuresWith({ perTenShots: 0.3, least: 0.1, verdict: 'no-difference' }), ways)
    expect(small).toEqual({
      answer: 'No difference',
      lines: ['The middle saves about 0.3 strokes in ten such shots: too little to say anything.'],
    })
    expect(textOfFigures(figuresWith({ perTenShots: -0.02, verdict: 'no-difference' }), ways).lines).toEqual([
      'Not a tenth of a stroke in ten such shots.',
    ])
    const turning = textOfFigures(figuresWith({ least: -0.2, verdict: 'too-close' }), ways)
    expect(turning.answer).toBe('Too close to call')
    expect(turning.lines[0]).toContain('with more or less scatter it turns')
  })

  test('says where an assumption of our own carries the answer', () => {
    const { lines } = textOfFigures(figuresWith({ restsOn: 'short-side' }), ways)
    expect(lines).toHaveLength(2)
    expect(lines[1]).toContain('An assumption of our own carries this')
  })
})
