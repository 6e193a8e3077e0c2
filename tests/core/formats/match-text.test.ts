import { describe, expect, it } from 'vitest'
import type { MatchHole } from '#core/formats/hole-by-nets.ts'
import { matchStateOf } from '#core/formats/match-state.ts'
import { formatMatchLine } from '#core/formats/match-text.ts'

const holes = (won: number, lost: number, halved: number): MatchHole[] => [
  ...Array<MatchHole>(halved).fill(0),
  ...Array<MatchHole>(lost).fill(-1),
  ...Array<MatchHole>(won).fill(1),
]

// Common practice; no body publishes the wording. Dormie: Rules of Golf until 2019, rule 2-1.
describe('the line of a match', () => {
  it.each<readonly [MatchHole[], string]>([
    [holes(0, 0, 0), 'all square, 18 to play'],
    [holes(3, 1, 10), '2 up, 4 to play'],
    [holes(1, 1, 12), 'all square, 4 to play'],
    [holes(2, 0, 14), 'dormie 2'],
    [holes(3, 0, 13), 'won 3 & 2'],
    [holes(1, 0, 17), 'won 1 up'],
    [holes(2, 2, 14), 'halved'],
    [[...holes(0, 0, 18), null], 'all square after 18'],
    [[...holes(0, 0, 18), 0, null], 'all square after 19'],
    [[...holes(0, 0, 18), 1], 'won at the 19th'],
    [[...holes(0, 0, 20), -1], 'won at the 21st'],
    [[...holes(0, 0, 21), -1], 'won at the 22nd'],
    [[...holes(0, 0, 22), -1], 'won at the 23rd'],
  ])('%j is "%s"', (played, text) => {
    expect(formatMatchLine(matchStateOf(played, 18))).toBe(text)
  })

  it('over nine holes counts the tenth as the first extra one', () => {
    expect(formatMatchLine(matchStateOf([...holes(0, 0, 9), 1], 9))).toBe('won at the 10th')
  })

  it.each([
    [{ kind: 'conceded', winner: 'A' }, 'won by concession'],
    [{ kind: 'disqualified', winner: 'B' }, 'won by disqualification'],
    [{ kind: 'agreed', winner: 'B' }, 'won by agreement'],
    [{ kind: 'both-disqualified' }, 'both disqualified'],
  ] as const)('names what ended it: %j', (result, text) => {
    expect(formatMatchLine({ ...matchStateOf(holes(2, 0, 3), 18), result })).toBe(text)
  })
})
