import { matchStrokesMethods } from '#core/handicap/match-strokes.ts'
import type { FactKind } from '#core/outing/facts.ts'
import type { Json } from '#core/values/json.ts'
import type { UpEvent } from '#server/live/dispatch.ts'

const hash = 'a'.repeat(64)
const grant = { hash, role: 'scorer', group: 'a', label: 'Birch' }

/** A valid message of each type; the suite fails when one is missing. */
export const messageExamples: Readonly<Record<UpEvent, Json>> = {
  follow: { era: 'era00000001', feeds: [{ feed: 'g/a', after: 1 }] },
  pull: { feed: 'all', after: 1 },
  exchange: { feed: 'all', here: [['alder', [[1, 2]]]] },
  push: { ops: ['{}'] },
}

interface FactExample {
  readonly key: string
  readonly values: readonly Json[]
}

const ratings = { courseRatingTenths: 714, slope: 125, par: 72 }
const nine = (value: number) => Array.from({ length: 9 }, () => value)

/** A key of each kind of fact, and a valid value of each of its forms. */
export const factExamples: Readonly<Record<FactKind, FactExample>> = {
  title: { key: 'title', values: ['Quillmoor'] },
  day: { key: 'day', values: ['2026-05-16'] },
  length: { key: 'length', values: [18] },
  rules: { key: 'rules', values: [true] },
  course: { key: 'course', values: [{ name: 'Quillmoor' }] },
  hole: { key: 'hole/1', values: [{ par: 4, index: 7 }] },
  tee: {
    key: 'tee/white',
    values: [
      {
        name: 'White',
        ratings,
        frontRatings: null,
        backRatings: null,
        pars: nine(4),
        indexes: nine(1),
        lengths: { unit: 'yards', byHole: nine(400) },
      },
    ],
  },
  player: { key: 'player/birch', values: [{ name: 'Birch' }] },
  handicap: {
    key: 'handicap/birch',
    values: [
      { kind: 'index', tenths: 124 },
      { kind: 'course-handicap', strokes: 14 },
      { kind: 'plain-strokes', strokes: -1 },
    ],
  },
  playerTee: { key: 'player-tee/birch', values: ['white'] },
  ball: { key: 'ball/birch', values: [{ players: ['birch'] }] },
  place: { key: 'place/birch', values: [{ group: 'a', position: 1, elsewhere: [{ group: 'b', holes: [[1, 1]] }] }] },
  group: { key: 'group/a', values: [{ name: 'First' }] },
  order: { key: 'g/a/order', values: [[[10, 1]]] },
  score: { key: 'g/a/score/birch/1/1/card', values: [4, 'picked-up'] },
  main: { key: 'main', values: ['match'] },
  gameFormat: { key: 'game/match/format', values: ['stroke-play-net'] },
  gameSides: { key: 'game/match/sides', values: [[['birch']]] },
  gameAllowance: { key: 'game/match/allowance', values: [95] },
  gameRounding: { key: 'game/match/rounding', values: ['course-handicap-unrounded'] },
  gameNineHoleIndex: { key: 'game/match/nine-hole-index', values: ['half-index-unrounded'] },
  gameMatchStrokes: { key: 'game/match/match-strokes', values: [matchStrokesMethods[0]] },
  closeBall: { key: 'close/ball/birch', values: [{ scores: [[1, 1, 4]] }] },
  closeGroup: { key: 'close/group/a', values: [{ facts: [['g/a/order', [[1, 1]]]] }] },
  invite: { key: 'invite/d', values: [grant] },
  key: { key: 'key/rowan', values: [{ ...grant, invite: 'd' }] },
  voidKey: { key: 'void/key/rowan', values: [true] },
  voidInvite: { key: 'void/invite/other', values: [true] },
}
