import { describe, expect, test } from 'vitest'
import { asWritten, changedFacts, gameOfDraft, takeAwayFacts } from '#client/screens/games/game-acts.ts'
import { draftOfGame, methodsOfDraft, newGameDraft } from '#client/screens/games/game-draft.ts'
import { faultsOfGame } from '#client/screens/games/game-faults.ts'
import { ballsInPlay, newGameId } from '#client/screens/games/games-view.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import { must } from '#core/values/assert.ts'
import type { GameId } from '#core/values/ids.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const outing = outingOfPlain(plainWith())
const { balls, ballPlayers } = ballsInPlay(outing, null)
const match = must(
  outing.games.find(({ id }) => id === 'match'),
  'the match is there',
)
const written = must(asWritten(match), 'the match has a format')

describe('a game that is changed', () => {
  test('writes only what differs', () => {
    const draft = { ...draftOfGame(match, balls), allowance: '90' }
    expect(changedFacts(written, gameOfDraft({ ...written, draft, balls }))).toEqual([
      { key: 'game/match/allowance', value: 90 },
    ])
    expect(changedFacts(written, gameOfDraft({ ...written, draft: draftOfGame(match, balls), balls }))).toEqual([])
  })

  test('keeps sides that are none of the usual ways until others are chosen', () => {
    const odd = { ...match, sides: [['alder'], ['birch', 'rowan']] } as unknown as typeof match
    const draft = draftOfGame(odd, balls)
    expect(gameOfDraft({ ...written, draft, balls }).sides).toEqual([['alder'], ['birch', 'rowan']])
    expect(gameOfDraft({ ...written, draft: { ...draft, sidesChosen: null }, balls }).sides).toEqual([
      ['alder', 'birch'],
      ['cedar', 'rowan'],
    ])
  })

  test('is taken away with every fact of it', () => {
    const keys = takeAwayFacts(written).map(({ key, value }) => [key, value])
    expect(keys).toContainEqual(['game/match/format', null])
    expect(keys.every(([, value]) => value === null)).toBe(true)
  })

  test('of a group loses the group from its id', () => {
    const own = { ...match, id: 'four/match', group: 'four' } as unknown as typeof match
    expect(asWritten(own)?.id).toBe('match')
  })
})

describe('a new game', () => {
  test('goes by its format, and by a new id where something stands under that', () => {
    const fact = (key: string) => ({ key, value: { to: null }, replaces: [] })
    const state = foldOps(emptyLog, [makeOp([], 'alder', [fact('g/four/conceded-match/nassau/alder')])])
    expect(newGameId(state, 'skins', () => 'other')).toBe('skins')
    expect(newGameId(state, 'nassau', () => 'other')).toBe('other')
  })

  test('proposes what its format proposes', () => {
    expect(methodsOfDraft(newGameDraft('four-ball-match')).allowancePercent).toBe(90)
    expect(methodsOfDraft(newGameDraft('foursomes-match')).handicapShares).toEqual([[50, 50]])
    expect(methodsOfDraft(newGameDraft('waltz')).countingBalls).toEqual([1, 2, 3])
  })

  test.each<[FormatName, Parameters<typeof faultsOfGame>[1], string]>([
    ['stableford', { ...newGameDraft('stableford'), allowance: '120' }, 'stableford-allowance'],
    ['waltz', { ...newGameDraft('waltz'), counting: '1, x' }, 'waltz-counting'],
    [
      'maximum-score-net',
      {
        ...newGameDraft('maximum-score-net'),
        methods: { ...newGameDraft('maximum-score-net').methods, maximumScore: { kind: 'fixed', strokes: 10 } },
        maximum: '',
      },
      'maximum-score-net-maximum',
    ],
  ])('%s names the field at fault', (format, draft, field) => {
    expect(faultsOfGame(format, draft, balls, ballPlayers).map(fault => fault.field)).toEqual([field])
  })

  test('of one ball asks for a share of each partner', () => {
    const pairs = [
      { id: 'b1', name: 'Alder & Cedar' },
      { id: 'b2', name: 'Birch & Rowan' },
    ]
    const draft = newGameDraft('foursomes-match')
    expect(faultsOfGame('foursomes-match', draft, pairs, 2)).toEqual([])
    const wrong = { ...draft, shares: { 2: '50' } }
    expect(faultsOfGame('foursomes-match', wrong, pairs, 2).map(({ field }) => field)).toEqual([
      'foursomes-match-shares',
    ])
  })

  test('takes the sides chosen', () => {
    const draft = {
      ...newGameDraft('four-ball-match'),
      sidesChosen: [
        ['alder', 'cedar'],
        ['birch', 'rowan'],
      ],
    }
    const made = gameOfDraft({ id: 'new' as GameId, group: null, format: 'four-ball-match', draft, balls })
    expect(made.sides).toEqual([
      ['alder', 'cedar'],
      ['birch', 'rowan'],
    ])
  })
})
