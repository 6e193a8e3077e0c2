import { describe, expect, test } from 'vitest'
import { type Draft, emptyDraft, emptyPlayer, indexesUnused, withIndexesFilled } from '#client/screens/start/draft.ts'
import { gamesChosen } from '#client/screens/start/draft-balls.ts'
import { faultsOfDraft } from '#client/screens/start/draft-faults.ts'
import { outingOfDraft } from '#client/screens/start/outing-of-draft.ts'
import { isSuggestionOn, suggestionsFor, suggestionWords, withSuggestion } from '#client/screens/start/suggestions.ts'
import { resultsOf } from '#core/outing/results-of.ts'

const draftOf = (count: number): Draft => ({
  ...withIndexesFilled(emptyDraft),
  courseName: 'Quillmoor',
  players: ['Alder', 'Birch', 'Cedar', 'Rowan', 'Fir', 'Hazel'].slice(0, count).map((name, place) => ({
    ...emptyPlayer(`p${place + 1}`),
    name,
    kind: 'course-handicap',
    figure: String(5 * place),
  })),
})

describe('games suggested', () => {
  test.each([
    [2, ['singles-match', 'stableford', 'six-threes-match', 'nassau']],
    [3, ['nine-points', 'split-sixes', 'three-ball-match', 'skins']],
    [4, ['four-ball-match', 'sixes', 'nassau', 'skins', 'six-threes-match']],
  ])('to %i players are %j', (count, formats) => {
    expect(suggestionsFor(draftOf(count))).toEqual(formats)
  })

  test('can be started by one tap, with every method set and nothing missing', () => {
    for (const count of [2, 3, 4, 5, 6]) {
      for (const format of suggestionsFor(draftOf(count))) {
        const draft = { ...draftOf(count), ...withSuggestion(draftOf(count), format) }
        expect([format, gamesChosen(draft), faultsOfDraft(draft)]).toEqual([format, [format], []])
        expect(isSuggestionOn(draft, format)).toBe(true)
        const outing = outingOfDraft(draft)
        expect([format, outing && [...resultsOf(outing).games.values()].map(({ kind }) => kind)]).not.toContain('gap')
      }
    }
  })

  test('of four set Nassau in pairs', () => {
    const outing = outingOfDraft({ ...draftOf(4), ...withSuggestion(draftOf(4), 'nassau') })
    expect(outing?.games[0]?.sides?.map(side => side.length)).toEqual([2, 2])
  })

  test('say what they are and whose strokes', () => {
    expect(suggestionWords('skins')).toBe(
      'The lowest score alone takes the hole; a tie carries on. Everybody off their own handicap.',
    )
    expect(suggestionWords('nassau')).toMatch(/Strokes from the lowest\.$/)
  })

  test('are none to one player, nor to partners with one ball', () => {
    expect(suggestionsFor(draftOf(1))).toEqual([])
    expect(suggestionsFor({ ...draftOf(4), ballPlayers: 2 })).toEqual([])
  })
})

describe('the gaps of the stroke indexes', () => {
  test('are named once every hole has one and two have the same', () => {
    const whole = withIndexesFilled(emptyDraft)
    expect(indexesUnused(whole)).toEqual([])
    const holes = whole.holes.map((hole, place) => (place === 6 ? { ...hole, index: '3' } : hole))
    expect(indexesUnused({ ...whole, holes })).toEqual([7])
    const half = holes.map((hole, place) => (place === 17 ? { ...hole, index: '' } : hole))
    expect(indexesUnused({ ...whole, holes: half })).toEqual([])
  })
})
