import { describe, expect, test } from 'vitest'
import { formatHoles, formatOrdinal, formatOver } from '#client/words/figures.ts'
import { catalogue, say } from '#client/words/say-any.ts'
import { type Word, wordTags } from '#client/words/word.ts'

const words: readonly (readonly [string, Word])[] = Object.entries(catalogue)

/** What people never read on a screen: the words of the machinery. */
const banned = /\b(sync\w*|conflict\w*|merg\w*|queue\w*|logs?|ops?|facts?|current)\b/i

/** Document, edition, publishers, and the place in it. */
const publishedPlace =
  /^(Rules of Golf 2023|Rules of Handicapping 2024|Committee Procedures 2023), R&A and USGA, (rule \d+(\.\d+[a-z]?)?|definitions|Appendix [A-H]|section \d+[A-Z])$/

describe('every text on a screen', () => {
  test('carries a tag, and a standard word, it alone, the document and the place in it where it stands', () => {
    for (const [key, { text, tag, source }] of words) {
      expect(text, key).not.toBe('')
      expect(wordTags, key).toContain(tag)
      expect(source !== null, key).toBe(tag === 'standard')
      if (source !== null) expect(source, key).toMatch(publishedPlace)
    }
  })

  test('has a name of its own: no part of the catalogue hides another’s', async () => {
    const parts = Object.values(
      import.meta.glob<Record<string, object>>('../../../client/words/*-words.ts', { eager: true }),
    )
    const names = parts.flatMap(part => Object.values(part).flatMap(each => Object.keys(each)))
    expect(names.filter((name, place) => names.indexOf(name) !== place)).toEqual([])
    expect(names).toHaveLength(words.length)
  })

  test('speaks of scores and phones, never of the machinery', () => {
    expect(words.filter(([, { text }]) => banned.test(text)).map(([key]) => key)).toEqual([])
  })

  test('has its places filled by name', () => {
    expect(say('history-changed', { who: 'Birch', player: 'Rowan', hole: '8th', from: 5, score: 6 })).toBe(
      'Birch changed Rowan’s 8th from 5 to 6',
    )
  })
})

describe('figures as people say them', () => {
  test.each([
    [0, 'level'],
    [3, '+3'],
    [-1, '−1'],
  ])('%i against the level is "%s"', (strokes, said) => {
    expect(formatOver(strokes)).toBe(said)
  })

  test.each([
    [1, '1st'],
    [2, '2nd'],
    [3, '3rd'],
    [8, '8th'],
    [11, '11th'],
    [12, '12th'],
    [13, '13th'],
    [18, '18th'],
  ])('hole %i is the %s', (hole, said) => {
    expect(formatOrdinal(hole)).toBe(said)
  })

  test('holes in a run are drawn together, in the order given', () => {
    expect(formatHoles([2])).toBe('2')
    expect(formatHoles([16, 17, 18, 1, 2, 5])).toBe('16 to 18, 1, 2, 5')
  })
})
