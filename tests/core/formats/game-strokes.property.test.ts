import * as fc from 'fast-check'
import { expect } from 'vitest'
import { foursomesMatchMethods, foursomesMatchStrokes } from '#core/handicap/foursomes-match-strokes.ts'
import { fraction } from '#core/values/fraction.ts'
import { ball, resultOf } from '#tests/kit/played-game.ts'
import { holds } from '#tests/kit/property.ts'

const anyPair = fc.tuple(fc.integer({ min: -5, max: 54 }), fc.integer({ min: -5, max: 54 }))

holds(
  'a foursomes match gives the strokes of the published sum, by either method',
  fc.tuple(anyPair, anyPair, fc.constantFrom(...foursomesMatchMethods)),
  ([first, second, sideStrokes]) => {
    const { strokes, receiver } = foursomesMatchStrokes(
      sideStrokes,
      first.map(each => fraction(each)),
      second.map(each => fraction(each)),
    )
    const game = { format: 'foursomes-match', sides: [['ab'], ['cd']], handicaps: { ab: first, cd: second } } as const
    const { strokes: given } = resultOf('match', { ...game, scores: {}, methods: { sideStrokes } })
    expect(['ab', 'cd'].map(id => given.get(ball(id))?.strokes)).toEqual([
      receiver === 'first' ? strokes : 0,
      receiver === 'second' ? strokes : 0,
    ])
  },
  2000,
)
