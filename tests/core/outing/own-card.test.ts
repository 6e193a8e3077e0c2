import { describe, expect, test } from 'vitest'
import { ownCardOf } from '#core/outing/own-card.ts'
import { faultsOfPlain } from '#core/outing/plain-faults.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { must } from '#core/values/assert.ts'
import type { BallId, GameId } from '#core/values/ids.ts'
import { notedDay } from '#tests/kit/noted-outing.ts'
import { autumnDay, type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const birch = 'birch' as BallId

function played(change: Change = {}) {
  const outing = outingOfPlain(plainWith(change))
  const results = resultsOf(outing)
  return { outing, results, card: must(ownCardOf(outing, results, birch), 'a card') }
}

function again(card: PlainOuting) {
  const outing = outingOfPlain(card)
  return { outing, results: resultsOf(outing) }
}

describe('a player’s own card', () => {
  test('is a sound file of one player, one ball and the games that nobody else decides', () => {
    const { card } = played()
    expect(faultsOfPlain(card)).toEqual([])
    expect(card).toMatchObject({
      title: 'Autumn Day',
      players: [{ id: 'birch', handicap: { courseHandicap: 7 } }],
      groups: [{ name: 'Group 4', balls: ['birch'] }],
      games: [{ id: 'points', sides: [['birch']] }],
      main: 'points',
    })
  })

  test('counts what it counted among the others, three by three', () => {
    const { results, card } = played()
    const own = again(card).results
    const lineIn = (from: typeof results) => {
      const game = from.games.get('points' as GameId)
      return game?.kind === 'total' ? game.lines.find(({ side }) => side[0] === birch)?.total : null
    }
    expect(lineIn(own)).toBe(37)
    expect(lineIn(own)).toBe(lineIn(results))
    expect(own.cards.get(birch)).toEqual(results.cards.get(birch))
  })

  test('names nobody else, whatever was conceded, agreed, marked or ruled', () => {
    const { card } = played(notedDay)
    const text = JSON.stringify(card).toLowerCase()
    for (const { id } of notedDay.players) if (id !== 'birch') expect(text).not.toContain(id)
    expect(faultsOfPlain(card)).toEqual([])
    // What was ruled for the match alone stays behind.
    expect(card.rulings?.map(({ id }) => id).sort()).toEqual(['seventh', 'third'])
  })

  test('keeps two scores that wait for a choice as two', () => {
    const blank = Array<null>(18).fill(null)
    const marker = { ball: 'birch', record: 'marker', holes: [6, ...blank.slice(1)] }
    const { card } = played({ scores: [...autumnDay.scores, marker] })
    expect(again(card).outing.cards.get(birch)?.scores.get('1/1')?.kind).toBe('two')
  })

  test('leaves out a game whose strokes hang on the others’ tees', () => {
    const tees = [
      { id: 'white', name: 'White' },
      { id: 'red', name: 'Red', pars: autumnDay.course.holes.map(({ par }, at) => (at === 0 ? par + 1 : par)) },
    ]
    const players = autumnDay.players.map(player => ({ ...player, tee: player.id === 'birch' ? 'red' : 'white' }))
    const games = [{ id: 'net', format: 'stroke-play-net', sides: [['alder'], ['birch']], allowance: 100 }]
    const { results, card } = played({ course: { ...autumnDay.course, tees }, players, games, main: 'net' })
    const net = results.games.get('net' as GameId)
    expect(net?.kind === 'total' && net.strokes.get(birch)?.forTeePar).not.toBe(0)
    expect(card.games).toEqual([])
    expect(card.course.tees?.map(({ id }) => id)).toEqual(['red'])
  })

  test('is none for a ball in no group', () => {
    const outing = outingOfPlain(plainWith({ groups: [], scores: [], games: [], main: undefined }))
    expect(ownCardOf(outing, resultsOf(outing), birch)).toBeNull()
  })
})
