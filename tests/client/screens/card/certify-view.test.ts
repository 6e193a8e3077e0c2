import { describe, expect, test } from 'vitest'
import { certifierWords, differencesOf } from '#client/screens/card/certify-view.ts'
import { certificationOfBall } from '#core/outing/certification-of.ts'
import { must } from '#core/values/assert.ts'
import { type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'
import { ball } from '#tests/kit/played-game.ts'

const strokes = [5, 6, 4, 5, 6, 3, 4, 6, 5, 5, 5, 3, 6, 6, 4, 4, 6, 5]

function certificationWith(change: Change) {
  const outing = outingOfPlain(plainWith(change))
  return certificationOfBall(outing, must(outing.balls.get(ball('alder')), 'Alder plays'))
}

describe('the card as two records see it', () => {
  test('lists the holes where they differ, each with the scores to choose from', () => {
    const marked = strokes.map((score, place) => (place === 7 ? 7 : score))
    const scores = [
      { ball: 'alder', holes: strokes },
      { ball: 'alder', record: 'marker', holes: marked },
    ]
    expect(differencesOf(certificationWith({ scores }))).toEqual([
      { hole: 8, lap: 1, text: 'Hole 8: card 6, marker 7', choices: [6, 7] },
    ])
  })

  test('says what is certified, and what has changed since', () => {
    const scores = [{ ball: 'alder', holes: strokes }]
    const certified = [
      { ball: 'alder', by: 'player' },
      { ball: 'alder', by: 'marker', scores: strokes.map((score, place) => [place + 1, 1, place === 2 ? 3 : score]) },
    ]
    const found = certificationWith({ scores, certified })
    expect(certifierWords(found.player)).toBe('certified')
    expect(certifierWords(found.marker)).toBe('certified, but a score has changed since')
    expect(differencesOf(found).map(({ text }) => text)).toEqual(['Hole 3: changed since certified by the marker'])
  })

  test('leaves holes with nothing written to the card itself', () => {
    const found = certificationWith({ scores: [{ ball: 'alder', holes: [5] }] })
    expect(differencesOf(found)).toEqual([])
    expect(certifierWords(found.player)).toBe('not certified')
  })
})
