import { describe, expect, test } from 'vitest'
import { nothingKnown, nothingSeen, proposalOf } from '#client/screens/rulings/proposals.ts'
import { emptyRuling, faultsOfRuling, rulingsOfDraft } from '#client/screens/rulings/ruling-draft.ts'

/** Rules of Golf 2023, R&A and USGA. */
describe('what the Rules propose', () => {
  test('of a score returned too low: disqualified; of one too high: it stands (3.3b(3))', () => {
    const low = proposalOf('hole-score', { ...nothingSeen, returned: '4', actual: '5' })
    expect(low?.draft).toMatchObject({ kind: 'disqualified', rule: 'Rules of Golf 3.3b(3)' })
    const high = proposalOf('hole-score', { ...nothingSeen, returned: '6', actual: '5' })
    expect(high).toMatchObject({ text: 'No penalty: the score of 6 stands.', draft: { kind: 'no-penalty' } })
  })

  test('of a penalty that the player did not know of: the committee adds it on the hole (3.3b(3))', () => {
    const seen = { ...nothingSeen, returned: '4', actual: '6', why: 'unknown-penalty-stroke' } as const
    expect(proposalOf('hole-score', seen)?.draft).toMatchObject({ kind: 'penalty', strokes: '2' })
  })

  test('of a hole left blank in Stableford: no penalty (21.1b)', () => {
    const seen = { ...nothingSeen, cardForm: 'stableford', actual: '6' } as const
    expect(proposalOf('hole-score', seen)?.draft.kind).toBe('no-penalty')
  })

  test('of a handicap declared too low in a match: it is what the player plays off (3.2c(1))', () => {
    const seen = { ...nothingSeen, declared: '10', correct: '12' }
    expect(proposalOf('match-handicap', seen)?.draft).toMatchObject({ kind: 'plays-off', strokes: '10' })
  })

  test('of a start four minutes late: the general penalty in the form of play (5.3a)', () => {
    const late = { ...nothingSeen, minutes: '4' }
    expect(proposalOf('start', late)?.draft).toMatchObject({ kind: 'penalty', strokes: '2' })
    expect(proposalOf('start', { ...late, form: 'match' })?.draft).toMatchObject({ strokes: '0', isHoleLost: true })
    expect(proposalOf('start', { ...late, minutes: '6' })?.draft.kind).toBe('disqualified')
  })

  test('of a card that was not certified: disqualified, or two strokes under the Model Local Rule (3.3b(2))', () => {
    expect(proposalOf('certification', nothingSeen)?.draft.kind).toBe('disqualified')
    const draft = proposalOf('certification', { ...nothingSeen, hasLocalRule: true })?.draft
    expect(draft).toMatchObject({ kind: 'penalty', strokes: '2', rule: 'Model Local Rule L-1' })
  })

  test('of a handicap too low on a card: the net score is off it where it is the player’s duty (3.3b(4), 2019)', () => {
    const seen = { ...nothingSeen, duty: 'player', onCard: '10', correct: '12' } as const
    expect(proposalOf('card-handicap', seen)).toMatchObject({
      text: 'No penalty: the net score is off 10.',
      draft: { kind: 'net-off', strokes: '10', rule: 'Rules of Golf 3.3b(4)' },
    })
    expect(proposalOf('card-handicap', { ...seen, onCard: '14' })?.draft.kind).toBe('disqualified')
    expect(proposalOf('card-handicap', { ...seen, duty: 'committee' })?.draft.kind).toBe('no-penalty')
  })

  test('of a late partner: the hole from which the two may play (23.4)', () => {
    const known = { ...nothingKnown, holes: [4, 5].map(hole => ({ value: `${hole}/1`, text: String(hole) })) }
    const late = { ...nothingSeen, ball: 'birch', inPlay: '4/1' }
    const joinsAt = (seen: Partial<typeof late>) =>
      proposalOf('late-partner', { ...late, ...seen }, known)?.draft.joinsAt
    expect(joinsAt({})).toBe('4/1')
    expect(joinsAt({ partnerHasStarted: true })).toBe('5/1')
    expect(joinsAt({ anyoneHasStarted: true })).toBe('4/1')
    const inMatch = { ...late, form: 'match', anyoneHasStarted: true } as const
    expect(proposalOf('late-partner', inMatch, known)?.draft.joinsAt).toBe('5/1')
    expect(proposalOf('late-partner', { ...inMatch, inPlay: '5/1' }, known)?.text).toContain('no hole left')
    expect(proposalOf('late-partner', { ...late, ball: '' }, known)).toBeNull()
  })

  test('of holes traded: both sides are disqualified where they knew (clarification 3.2b(1)/1)', () => {
    expect(proposalOf('traded-holes', nothingSeen)?.draft.kind).toBe('disqualified')
    expect(proposalOf('traded-holes', { ...nothingSeen, knew: false })?.draft.kind).toBe('no-penalty')
  })

  test('of a total written wrong: the sum of the card counts, without penalty (3.3b(4))', () => {
    const seen = { ...nothingSeen, ball: 'birch', written: '82' }
    expect(proposalOf('written-sum', seen, { ...nothingKnown, gross: 84 })).toEqual({
      text: 'No penalty: the committee’s sum of 84 counts.',
      draft: { kind: 'no-penalty', ball: 'birch', rule: 'Rules of Golf 3.3b(4)', reason: 'Written 82, counts 84.' },
    })
    expect(proposalOf('written-sum', seen, { ...nothingKnown, gross: 82 })?.text).toBe('The total of 82 is right.')
    expect(proposalOf('written-sum', seen)).toBeNull()
  })

  test('nothing while a figure is missing or is none', () => {
    expect(proposalOf('hole-score', nothingSeen)).toBeNull()
    expect(proposalOf('match-handicap', { ...nothingSeen, declared: 'ten', correct: '12' })).toBeNull()
    expect(proposalOf('start', nothingSeen)).toBeNull()
  })
})

describe('a ruling from its fields', () => {
  const draft = { ...emptyRuling, ball: 'birch', hole: '8/1', reason: ' late ' }

  test('names hole, strokes and reason', () => {
    expect(rulingsOfDraft(draft)).toEqual([
      {
        kind: 'penalty',
        ball: 'birch',
        hole: [8, 1],
        strokes: 2,
        holeLost: false,
        games: null,
        rule: null,
        reason: 'late',
      },
    ])
    expect(rulingsOfDraft({ ...draft, kind: 'disqualified', hole: '' })).toMatchObject([{ hole: null }])
  })

  test('is one for each of two who are disqualified together', () => {
    const both = rulingsOfDraft({ ...draft, kind: 'disqualified', hole: '', also: 'cedar' })
    expect(both).toMatchObject([{ ball: 'birch' }, { ball: 'cedar' }])
    expect(rulingsOfDraft({ ...draft, also: 'cedar' })).toHaveLength(1)
    expect(rulingsOfDraft({ ...draft, kind: 'disqualified', also: 'birch' })).toHaveLength(1)
  })

  test('is not made without its ball, its strokes and a game', () => {
    expect(faultsOfRuling(emptyRuling).map(({ field }) => field)).toEqual(['ball'])
    expect(faultsOfRuling({ ...draft, strokes: '0', games: [] }).map(({ field }) => field)).toEqual([
      'strokes',
      'games',
    ])
    expect(faultsOfRuling({ ...draft, strokes: '0', isHoleLost: true })).toEqual([])
    expect(faultsOfRuling({ ...emptyRuling, kind: 'no-penalty' })).toEqual([])
    expect(faultsOfRuling({ ...emptyRuling, kind: 'no-penalty', joinsAt: '4/1' }).map(({ field }) => field)).toEqual([
      'ball',
    ])
  })
})
