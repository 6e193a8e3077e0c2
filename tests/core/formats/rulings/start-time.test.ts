import { describe, expect, it } from 'vitest'
import { ruleOnStartTime } from '#core/formats/rulings/start-time.ts'

describe('a start at the wrong time (Rules of Golf 5.3a, R&A and USGA, 2019 and 2023)', () => {
  it('carries no penalty on time', () => {
    expect(ruleOnStartTime(0, 'stroke-play')).toEqual({ code: 'no-penalty' })
  })

  it.each([5, -5, 0.5])('is the general penalty %d minutes late: five included, early as well', minutes => {
    const penalty = { unit: 'strokes', strokes: 2 }
    expect(ruleOnStartTime(minutes, 'stroke-play')).toEqual({ code: 'general-penalty', penalty })
  })

  it.each([6, -6, 5.1])('disqualifies %d minutes late', minutes => {
    expect(ruleOnStartTime(minutes, 'match')).toEqual({ code: 'disqualified' })
  })

  it.each([
    ['maximum-score', { unit: 'strokes', strokes: 2 }],
    ['match', { unit: 'hole-lost' }],
    ['stableford', { unit: 'points', points: -2 }],
    ['par-bogey', { unit: 'holes', holes: -1 }],
  ] as const)('costs in %s %j (points and holes from memory)', (form, penalty) => {
    expect(ruleOnStartTime(3, form)).toEqual({ code: 'general-penalty', penalty })
  })
})
