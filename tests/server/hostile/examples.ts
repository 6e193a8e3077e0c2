import { matchStrokesMethods } from '#core/handicap/match-strokes.ts'
import type { FactKind } from '#core/outing/facts.ts'
import type { Json } from '#core/values/json.ts'
import type { AskEvent } from '#server/live/asking.ts'
import type { UpEvent } from '#server/live/dispatch.ts'

const hash = 'a'.repeat(64)
const grant = { hash, role: 'scorer', group: 'a', label: 'Birch' }

/** A valid message of each type; the suite fails when one is missing. */
export const messageExamples: Readonly<Record<UpEvent, Json>> = {
  follow: { era: 'era00000001', feeds: [{ feed: 'g/a', after: 1 }] },
  pull: { feed: 'all', after: 1 },
  exchange: { feed: 'all', here: [['alder', [[1, 2]]]] },
  push: { ops: ['{}'] },
  words: { group: 'a' },
  askers: {},
  admit: { asker: 'rowan', invite: { id: 'd', secret: 's'.repeat(22) } },
  offers: {},
  delete: {},
}

/** The same of what a phone says that is in nowhere. */
export const askExamples: Readonly<Record<AskEvent, Json>> = {
  ask: { words: 'meadow lantern river', name: 'Rowan' },
  wait: { ticket: 't'.repeat(22) },
}

interface FactExample {
  readonly key: string
  readonly values: readonly Json[]
}

const ratings = { courseRatingTenths: 714, slope: 125, par: 72 }
const ruled = { games: ['match'], rule: 'Rules of Golf 3.2c', reason: 'Told too late.' }
const nine = (value: number) => Array.from({ length: 9 }, () => value)

/** A key of each kind of fact, and a valid value of each of its forms. */
export const factExamples: Readonly<Record<FactKind, FactExample>> = {
  title: { key: 'title', values: ['Quillmoor'] },
  day: { key: 'day', values: ['2026-05-16'] },
  length: { key: 'length', values: [18] },
  rules: { key: 'rules', values: [true] },
  course: { key: 'course', values: [{ name: 'Quillmoor' }] },
  hole: { key: 'hole/1', values: [{ par: 4, index: 7 }] },
  green: { key: 'green/1', values: [{ unit: 'yards', width: 26, depth: 28, right: 0 }] },
  shape: {
    key: 'shape/1/001',
    values: [
      { kind: 'bunker', unit: 'yards', gap: 3, width: 8, length: 15, by: 'green', side: 'left' },
      {
        kind: 'water',
        unit: 'metres',
        gap: 0,
        width: 80,
        length: 20,
        by: 'line',
        side: 'on',
        from: 'tee',
        distance: 180,
      },
    ],
  },
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
  gameHoles: { key: 'game/match/holes', values: [{ from: [10, 1], to: null }] },
  gameSides: { key: 'game/match/sides', values: [[['birch']]] },
  gameAllowance: { key: 'game/match/allowance', values: [95] },
  gameRounding: { key: 'game/match/rounding', values: ['course-handicap-unrounded'] },
  gameCourseHandicap: { key: 'game/match/course-handicap', values: ['without-rating-minus-par'] },
  gameNineHoleIndex: { key: 'game/match/nine-hole-index', values: ['half-index-unrounded'] },
  gameMatchStrokes: { key: 'game/match/match-strokes', values: [matchStrokesMethods[0]] },
  gameSideStrokes: { key: 'game/match/side-strokes', values: ['half-of-difference'] },
  gameHandicapShares: { key: 'game/match/handicap-shares', values: [[[60, 40]]] },
  gameMixedTees: { key: 'game/match/mixed-tees', values: ['one-tee-par'] },
  gameCountingBalls: { key: 'game/match/counting-balls', values: [[1, 2, 3]] },
  gameShortTeam: { key: 'game/match/short-team', values: ['ghost-of-unrounded'] },
  gameDrawnCard: { key: 'game/match/drawn-card', values: ['birch'] },
  gameMaximumScore: {
    key: 'game/match/maximum-score',
    values: [{ kind: 'twice-par' }, { kind: 'net-double-bogey' }, { kind: 'fixed', strokes: 10 }],
  },
  gameSkins: { key: 'game/match/skins', values: ['carry-over'] },
  gameSkinsLeft: { key: 'game/match/skins-left', values: ['play-on'] },
  gamePresses: { key: 'game/match/presses', values: ['by-hand'] },
  gameTies: {
    key: 'game/match/ties',
    values: [{ method: 'points', scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'lot' }],
  },
  concededStroke: { key: 'g/a/conceded-stroke/match/birch/1/1', values: [4] },
  concededHole: { key: 'g/a/conceded-hole/match/birch/1/1', values: [{ to: 'rowan' }, { to: null }] },
  concededMatch: { key: 'g/a/conceded-match/match/birch', values: [{ to: null }] },
  agreedHole: {
    key: 'g/a/agreed-hole/match/1/1',
    values: [{ results: [{ between: ['birch', 'rowan'], won: null }] }],
  },
  agreedResult: {
    key: 'g/a/agreed-result/match',
    values: [{ results: [{ between: ['birch', 'rowan'], won: 'birch', by: 3, left: 2 }] }],
  },
  press: { key: 'g/a/press/match/3/1', values: [{ by: 'birch' }] },
  holeOut: { key: 'hole-out/1/1', values: [{ counts: 'net-par', reason: 'The green is under water.' }] },
  drive: { key: 'g/a/drive/birch/1/1', values: ['rowan'] },
  teeShot: { key: 'g/a/tee-shot/birch/1/1', values: ['rowan'] },
  likelyScore: { key: 'g/a/likely-score/birch/1/1', values: [7] },
  absence: {
    key: 'g/a/absence/birch',
    values: [{ joinedAt: [3, 1], leftAt: null, isWithdrawn: false, reason: 'Late.' }],
  },
  marker: { key: 'g/a/marker/birch', values: ['rowan'] },
  certifiedByPlayer: { key: 'g/a/certified-by-player/birch', values: [{ scores: [[1, 1, 4]] }] },
  certifiedByMarker: { key: 'g/a/certified-by-marker/birch', values: [{ scores: [[1, 1, 4]] }] },
  playingConditions: { key: 'playing-conditions', values: [{ strokes: 3, reason: 'wind' }] },
  ruling: {
    key: 'ruling/first',
    values: [
      { ...ruled, kind: 'no-penalty', ball: null },
      { ...ruled, kind: 'penalty', ball: 'birch', hole: [1, 1], strokes: 2, holeLost: false },
      { ...ruled, kind: 'disqualified', ball: 'birch', hole: null },
      { ...ruled, kind: 'plays-off', ball: 'birch', strokes: 14 },
      { ...ruled, kind: 'net-off', ball: 'birch', strokes: 14 },
    ],
  },
  closeBall: { key: 'close/ball/birch', values: [{ scores: [[1, 1, 4]] }] },
  closeGroup: { key: 'close/group/a', values: [{ facts: [['g/a/order', [[1, 1]]]] }] },
  invite: { key: 'invite/d', values: [grant] },
  key: { key: 'key/rowan', values: [{ ...grant, invite: 'd' }] },
  voidKey: { key: 'void/key/rowan', values: [true] },
  voidInvite: { key: 'void/invite/other', values: [true] },
}
