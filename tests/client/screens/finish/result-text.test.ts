import { describe, expect, test } from 'vitest'
import { resultText } from '#client/screens/finish/result-text.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { autumnDay, type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

/** The text of an outing with these fields, by its parts between blank lines. */
function partsOf(change: Change = {}): string[] {
  const outing = outingOfPlain(plainWith(change))
  const [group] = outing.groups.values()
  if (!group) throw new Error('no group')
  return resultText(outing, resultsOf(outing), group).split('\n\n')
}

type Score = number | string | null

/** The cards of the day with some boxes written otherwise. */
const cards = (change: (ball: string, score: number, hole: number) => Score) =>
  autumnDay.scores.map(({ ball, holes }) => ({ ball, holes: holes.map((score, at) => change(ball, score, at + 1)) }))

const each = [['alder'], ['birch'], ['cedar'], ['rowan']]
const pairs = [
  ['alder', 'cedar'],
  ['birch', 'rowan'],
]
const game = (format: string, sides: readonly (readonly string[])[], more: Change = {}) => ({
  main: undefined,
  games: [{ id: 'game', format, sides, allowance: 100, ...more }],
})

describe('the result as text', () => {
  test('says what was played, each game in trade words and each card in one line of six threes', () => {
    expect(partsOf()).toEqual([
      'Autumn Day, Quillmoor, 10 October 2026',
      'Four-ball match, 100 %\nBirch & Rowan beat Alder & Cedar 4 & 2',
      'Stableford, 100 %, points\n1 Birch 37\n2 Rowan 36\n3 Alder 34\n4 Cedar 29',
      [
        'Cards by threes, each against its own level:',
        'Alder 88: +1, +1, −1, level, level, +1',
        'Birch 78: −2, +2, −1, level, +1, −1',
        'Cedar 100: +1, +1, +2, +1, level, +2',
        'Rowan 83: −1, +1, level, level, −1, +1',
      ].join('\n'),
    ])
  })

  test('marks equal places, and says how far a round has come', () => {
    const scores = cards((_, score, hole) => (hole <= 13 ? score : null))
    const [head, match, points, lines] = partsOf({ scores })
    expect(head).toBe('Autumn Day, Quillmoor, 10 October 2026\nNot finished: through 13.')
    expect(match).toContain('Alder & Cedar v Birch & Rowan: Birch & Rowan 3 up, 5 to play')
    expect(points).toContain('1= Birch 26, through 13\n1= Rowan 26, through 13\n3 Alder 25, through 13')
    expect(lines).toContain('Alder, through 13: +1, +1, −1, level, …')
  })

  test('leaves two scores open wherever they count', () => {
    const marker = { ball: 'rowan', record: 'marker', holes: autumnDay.scores.map(() => null) }
    const holes = Array.from({ length: 18 }, (_, at) => (at === 7 ? 7 : null))
    const [head, match, points, lines] = partsOf({ scores: [...autumnDay.scores, { ...marker, holes }] })
    expect(head).toContain('Not final: two scores wait for a choice.')
    expect(match).toContain('hole 8: two scores')
    expect(points).toContain('2 Rowan 35, hole 8: two scores')
    expect(lines).toContain('Rowan: −1, +1, two scores on 8, level, −1, +1')
  })

  test('has nothing to tell before the first score', () => {
    const [head, , points, lines] = partsOf({ scores: undefined })
    expect(head).toContain('Not started.')
    expect(points).toContain('Alder, not started')
    expect(lines?.split('\n').slice(1)).toEqual(
      ['Alder', 'Birch', 'Cedar', 'Rowan'].map(name => `${name}, not started`),
    )
  })

  test('says no return of a hole picked up in stroke play, and against par what was returned', () => {
    const scores = cards((ball, score, hole) => (ball === 'cedar' && hole === 7 ? 'picked-up' : score))
    const [, strokes, lines] = partsOf({ scores, ...game('stroke-play-net', each, { allowance: 95 }) })
    expect(strokes).toBe(
      'Stroke play, net, 95 %, strokes\n1 Birch 71 (−1)\n2 Rowan 73 (+1)\n3 Alder 75 (+3)\nCedar, no return',
    )
    expect(lines).toMatch(/^Cedar, picked up 7: /m)
  })

  test('tells skins won and those that nobody won', () => {
    const [, skins] = partsOf(game('skins', each, { skins: 'carry-over' }))
    expect(skins).toBe(
      'Skins, 100 %, skins\n1 Birch 9\n2 Rowan 8\n3= Alder 0\n3= Cedar 0\n1 unclaimed: nobody won them, and nobody has them.',
    )
  })

  test('tells a Nassau by its parts', () => {
    const [, nassau] = partsOf(game('nassau', pairs, { allowance: 90 }))
    expect(nassau).toBe(
      [
        'Nassau, 90 %, points',
        '1 Birch & Rowan 3',
        '2 Alder & Cedar 0',
        'Front nine: Birch & Rowan won 2 up',
        'Back nine: Birch & Rowan won 2 & 1',
        'Overall: Birch & Rowan won 4 & 2',
      ].join('\n'),
    )
  })

  test('tells six threes for themselves', () => {
    const [, threes] = partsOf(game('six-threes-match', pairs, { allowance: 90 }))
    expect(threes).toContain('1 Birch & Rowan 5\n2 Alder & Cedar 1\nThree 1: Birch & Rowan won 1 up\nThree 2: halved')
  })

  test('tells a match given up and a match halved', () => {
    const concessions = [{ what: 'match', game: 'game', by: 'alder' }]
    const [, conceded] = partsOf({ ...game('singles-match', [['alder'], ['birch']]), concessions })
    expect(conceded).toContain('Birch beat Alder by concession')
    const scores = cards((_, __, hole) => (hole > 0 ? 4 : null))
    const [, halved] = partsOf({ ...game('singles-match', [['alder'], ['birch']], { allowance: 0 }), scores })
    expect(halved).toContain('Alder and Birch halved')
  })

  test('says which step split a tie for a prize', () => {
    const ties = { method: 'points', scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'shared' }
    const pars = plainWith().course.holes.map(({ par }) => par)
    const scores = [
      { ball: 'alder', holes: pars.map((par, at) => (at === 17 ? par - 1 : par)) },
      { ball: 'birch', holes: pars.map((par, at) => (at === 0 ? par - 1 : par)) },
    ]
    const [, points] = partsOf({ ...game('stableford', [['alder'], ['birch']], { allowance: 0, ties }), scores })
    expect(points).toContain('Alder before Birch by the last nine: 19 to 18')
  })

  test('says why a game cannot be told', () => {
    const players = autumnDay.players.map(({ id, name }) => ({ id, name }))
    const [, points] = partsOf({ ...game('stableford', each), players })
    expect(points).toContain('no handicap for Alder')
  })
})
