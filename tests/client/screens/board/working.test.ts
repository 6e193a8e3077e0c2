import { describe, expect, test } from 'vitest'
import { progressWords, totalWords } from '#client/screens/board/board-view.ts'
import { lineNotes } from '#client/screens/board/LineNotes.tsx'
import { matchHoleWords, voidWords } from '#client/screens/board/match-hole-words.ts'
import { shareWords } from '#client/screens/board/share-words.ts'
import { tieLines } from '#client/screens/board/TiesOnBoard.tsx'
import type { GameResult } from '#core/formats/game-result.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { GameId } from '#core/values/ids.ts'
import { type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

type Of<K extends GameResult['kind']> = Extract<GameResult, { readonly kind: K }>

/** The one game of an outing with these fields, which must be of the kind. */
function played<K extends GameResult['kind']>(kind: K, game: Change, change: Change = {}) {
  const outing = outingOfPlain(plainWith({ games: [{ id: 'game', ...game }], main: undefined, ...change }))
  const result = resultsOf(outing).games.get('game' as GameId)
  if (result?.kind !== kind) throw new Error(`not ${kind}: ${JSON.stringify(result)}`)
  return { outing, result: result as Of<K> }
}

const singles = [['alder'], ['birch']]
const card = (ball: string, holes: readonly unknown[]) => ({ ball, holes })

describe('the holes of a match in words', () => {
  const match = (change: Change) => played('match', { format: 'singles-match', sides: singles, allowance: 0 }, change)

  test('say who won each and by which scores', () => {
    const scores = [card('alder', [4, 6, 'picked-up', 4]), card('birch', [5, 6, 3])]
    const { outing, result } = match({ scores })
    const line = result.matches[0]
    expect(line && matchHoleWords(outing, line).map(({ what, why }) => `${what} · ${why}`)).toEqual([
      '1: Alder · 4 to 5, net',
      '2: halved · both 6, net',
      '3: Birch · the other side did not hole out',
    ])
  })

  test('say what was conceded, and what a concession did not change', () => {
    const concessions = [
      { what: 'hole', game: 'game', by: 'alder', hole: 1 },
      { what: 'hole', game: 'game', by: 'alder', hole: 2 },
    ]
    const scores = [card('alder', [null, 4]), card('birch', [null, 5])]
    const { outing, result } = match({ concessions, scores })
    const line = result.matches[0]
    expect(line && matchHoleWords(outing, line)[0]).toMatchObject({ what: '1: Birch', why: 'conceded' })
    expect(line && voidWords(outing, line)).toEqual(['Alder: concession of hole 2 has no effect, the hole was decided'])
  })
})

describe('a total in words', () => {
  const ties = { method: 'points', scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'shared' }

  test('tells which step split a tie, with the figures', () => {
    // Level pars but for one birdie: Alder's on the 18th, Birch's on the 1st.
    const pars = plainWith().course.holes.map(({ par }) => par)
    const scores = [
      card(
        'alder',
        pars.map((par, place) => (place === 17 ? par - 1 : par)),
      ),
      card(
        'birch',
        pars.map((par, place) => (place === 0 ? par - 1 : par)),
      ),
    ]
    const { outing, result } = played('total', { format: 'stableford', sides: singles, allowance: 0, ties }, { scores })
    expect(result.ties.flatMap(tie => tieLines(outing, tie))).toEqual(['Alder before Birch by the last nine: 19 to 18'])
  })

  test('tells a tie that no step splits', () => {
    const scores = ['alder', 'birch'].map(ball =>
      card(
        ball,
        plainWith().course.holes.map(({ par }) => par),
      ),
    )
    const { outing, result } = played('total', { format: 'stableford', sides: singles, allowance: 0, ties }, { scores })
    expect(result.ties.flatMap(tie => tieLines(outing, tie))).toEqual([
      'Alder and Birch are still tied: the place is shared',
    ])
  })

  test('carries its sign in par/bogey', () => {
    const scores = [card('alder', [3, 4, 3]), card('birch', [5, 5, 3])]
    const { result } = played('total', { format: 'par-bogey', sides: singles, allowance: 0 }, { scores })
    expect(result.lines.map(line => totalWords(line, result.unit))).toEqual(['+2', '−1'])
  })

  test('says who is disqualified, and for what', () => {
    const rulings = [{ id: 'one', kind: 'disqualified', ball: 'birch', reason: 'a wrong score' }]
    const { outing, result } = played('total', { format: 'stableford', sides: singles, allowance: 0 }, { rulings })
    const last = result.lines.at(-1)
    expect(last && progressWords(last)).toBe('disqualified')
    expect(last && lineNotes(outing, last)).toContain('Birch: disqualified, a wrong score')
  })
})

describe('shares in words', () => {
  test('tell each skin, and those carried on', () => {
    const scores = [card('alder', [4, 4, 3]), card('birch', [4, 5, 4])]
    const { outing, result } = played('shares', { format: 'skins-gross', sides: singles }, { scores })
    expect(
      shareWords(
        outing,
        result.lines.map(({ side }) => side),
        result,
      ),
    ).toEqual(['1: tied, 1 carried on', '2: Alder 2', '3: Alder 1'])
  })

  test('tell the points of everybody where they are split', () => {
    const sides = [['alder'], ['birch'], ['cedar']]
    const scores = [card('alder', [4]), card('birch', [5]), card('cedar', [5])]
    const { outing, result } = played('shares', { format: 'nine-points', sides, allowance: 0 }, { scores })
    expect(shareWords(outing, outing.games[0]?.sides ?? [], result)).toEqual(['1: Alder 5, Birch 2, Cedar 2'])
  })
})
