import { describe, expect, test } from 'vitest'
import { familyOf, formatsFitting } from '#client/screens/games/families.ts'
import {
  fitsSides,
  mostSides,
  sidesWords,
  textOfSides,
  waysToPart,
  waysToSide,
  wordsOfSides,
} from '#client/screens/games/sides.ts'
import { formatNames } from '#core/formats/format-names.ts'

const balls = ['Alder', 'Birch', 'Cedar', 'Rowan'].map(name => ({ id: name, name }))
const none = () => false

describe('the ways to make sides', () => {
  test('of one size stand in no order, and nobody is left out who need not be', () => {
    expect(waysToPart(['a', 'b', 'c', 'd'], [2, 2])).toEqual([
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
      [
        ['a', 'c'],
        ['b', 'd'],
      ],
      [
        ['a', 'd'],
        ['b', 'c'],
      ],
    ])
    expect(waysToPart(['a', 'b', 'c'], [1, 2])).toHaveLength(3)
    expect(waysToPart(['a', 'b', 'c'], [2, 2])).toEqual([])
  })

  test('a whole field plays each for themselves in one way', () => {
    expect(waysToSide('stableford', balls)).toEqual([[['Alder'], ['Birch'], ['Cedar'], ['Rowan']]])
  })

  test('set one ball alone against the others', () => {
    const sizes = waysToSide('best-ball-match', balls).map(sides => sides.map(side => side.length))
    expect(sizes).toEqual([
      [1, 3],
      [1, 3],
      [1, 3],
      [1, 3],
    ])
    expect(waysToSide('best-ball-match', balls.slice(0, 2))).toEqual([])
  })

  test('are level where two sides or more meet: pairs, or two alone', () => {
    const sizes = waysToSide('nassau', balls).map(sides => sides.map(side => side.length).join(' v '))
    expect(sizes).toEqual([...Array(3).fill('2 v 2'), ...Array(6).fill('1 v 1')])
    expect(new Set(waysToSide('six-threes-match', balls).map(sides => sides.length))).toEqual(new Set([2, 4]))
  })

  test('of sixes are the orders in which the first plays with the others', () => {
    const ways = waysToSide('sixes', balls)
    expect(ways.map(way => wordsOfSides('sixes', balls, way))).toEqual([
      'Alder with Birch, then Cedar, then Rowan',
      'Alder with Birch, then Rowan, then Cedar',
      'Alder with Cedar, then Birch, then Rowan',
      'Alder with Cedar, then Rowan, then Birch',
      'Alder with Rowan, then Birch, then Cedar',
      'Alder with Rowan, then Cedar, then Birch',
    ])
    expect(new Set(ways.map(way => textOfSides('sixes', way))).size).toBe(6)
    expect(waysToSide('sixes', balls.slice(0, 3))).toEqual([])
  })

  test('of two who play each for themselves are named', () => {
    expect(wordsOfSides('skins', balls, [['Alder'], ['Birch']])).toBe('Alder v Birch')
    expect(wordsOfSides('skins', balls, [['Alder'], ['Birch'], ['Cedar']])).toBe('all 3, each for themselves')
  })

  test('of sixes come to the same whoever stands first', () => {
    // Birch with Alder, Rowan and Cedar in turn is Alder with Birch, Cedar and Rowan.
    const seen = (...ids: string[]) =>
      textOfSides(
        'sixes',
        ids.map(id => [id]),
      )
    expect(seen('Birch', 'Alder', 'Rowan', 'Cedar')).toBe(seen('Alder', 'Birch', 'Cedar', 'Rowan'))
    expect(seen('Birch', 'Alder', 'Cedar', 'Rowan')).toBe(seen('Alder', 'Birch', 'Rowan', 'Cedar'))
  })

  test('are read with every side named', () => {
    expect(
      sidesWords(balls, [
        ['Alder', 'Cedar'],
        ['Birch', 'Rowan'],
      ]),
    ).toBe('Alder & Cedar v Birch & Rowan')
    expect(sidesWords(balls, [['Alder'], ['Birch'], ['Cedar']])).toBe('Alder v Birch v Cedar')
  })
})

describe('the formats to choose from', () => {
  const listed = (count: number, ballPlayers = 1) =>
    formatsFitting(balls.slice(0, count), ballPlayers, none).flatMap(({ formats }) => formats)

  test('are those that the players fit', () => {
    expect(listed(1)).not.toContain('singles-match')
    expect(listed(2)).toContain('singles-match')
    expect(listed(2)).not.toContain('four-ball-match')
    expect(listed(4)).toContain('four-ball-match')
  })

  test('with one ball of two leave out what counts own balls', () => {
    expect(listed(2, 2)).not.toContain('stableford')
  })

  test('keep one that is chosen, so that it can be taken away', () => {
    const shown = formatsFitting(balls.slice(0, 2), 1, format => format === 'four-ball-match')
    expect(shown.flatMap(({ formats }) => formats)).toContain('four-ball-match')
  })

  test('lie in families of the trade', () => {
    expect(familyOf('stableford')).toBe('own-ball')
    expect(familyOf('four-ball-match')).toBe('pairs')
    expect(familyOf('foursomes-match')).toBe('one-ball')
    expect(familyOf('skins')).toBe('each')
    expect(familyOf('nassau')).toBe('parts')
  })
})

describe('a field of more than four', () => {
  const field = Array.from({ length: 16 }, (_, place) => ({ id: `b${place + 1}`, name: `Tree ${place + 1}` }))

  test('has one way alone in every format, at once', () => {
    for (const format of formatNames) expect([format, waysToSide(format, field).length]).toEqual([format, 1])
  })

  test('has a way that its format can be played with, whatever the number', () => {
    for (const format of formatNames) {
      for (let n = 5; n <= 16; n++) {
        const [way] = waysToSide(format, field.slice(0, n))
        if (way) expect([format, n, fitsSides(format, way)]).toEqual([format, n, true])
      }
    }
  })

  test('plays each for themselves in what has a side for everybody, and in pairs as they are listed', () => {
    expect(waysToSide('stableford', field)[0]).toHaveLength(16)
    expect(waysToSide('four-ball-stableford', field)[0]?.[0]).toEqual(['b1', 'b2'])
    expect(waysToSide('four-ball-match', field)).toEqual([
      [
        ['b1', 'b2'],
        ['b3', 'b4'],
      ],
    ])
  })

  test('sides made by hand fit by their number and sizes, and nobody stands on two', () => {
    expect(
      fitsSides('four-ball-match', [
        ['a', 'b'],
        ['c', 'd'],
      ]),
    ).toBe(true)
    expect(
      fitsSides('four-ball-match', [
        ['a', 'b'],
        ['c', 'a'],
      ]),
    ).toBe(false)
    expect(fitsSides('four-ball-match', [['a', 'b', 'c'], ['d']])).toBe(false)
    expect(fitsSides('best-ball-match', [['a'], ['b', 'c']])).toBe(true)
    expect(fitsSides('best-ball-match', [['a'], ['b']])).toBe(false)
    expect(mostSides('singles-match', 16)).toBe(2)
  })
})
