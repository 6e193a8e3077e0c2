import { betterBall } from '#core/formats/ball-rules/better-ball.ts'
import { ownBall } from '#core/formats/ball-rules/own-ball.ts'
import { match, matchOfEachPair } from '#core/formats/contests/match.ts'
import { net } from '#core/formats/measures/net.ts'
import { type SideAllowance, sideAllowances } from '#core/handicap/allowance.ts'
import type { FormatName } from './format-names.ts'
import { appendixC, exactly, type FormatRow, handicapSettings, shareSettings } from './format-row.ts'
import type { Contest } from './game-input.ts'
import type { GameSetting } from './game-methods.ts'
import { totalFormats } from './total-formats.ts'

const matchSettings: readonly GameSetting[] = [...handicapSettings, 'matchStrokes']

/** A match of two sides that play one ball each, with the shares of its partners' Course Handicaps. */
const oneBallMatch = (allowance: SideAllowance): FormatRow => ({
  ballRule: ownBall,
  measure: net,
  contest: match,
  recordedAs: 'match-play',
  sides: { count: exactly(2), balls: exactly(1), players: exactly(2) },
  allowance: { percent: 100, shares: [sideAllowances[allowance]], source: appendixC },
  settings: [...shareSettings, 'sideStrokes'],
})

/** Three balls, each in a match with each other one: Rules of Golf, rule 21.4; R&A and USGA; 2023. */
const threeBallMatch = (contest: Contest): FormatRow => ({
  ballRule: ownBall,
  measure: net,
  contest,
  recordedAs: 'match-play',
  sides: { count: exactly(3), balls: exactly(1), players: exactly(1) },
  allowance: { percent: 100, shares: null, source: appendixC },
  settings: matchSettings,
})

export const formatTable: Readonly<Record<FormatName, FormatRow>> = {
  ...totalFormats,
  'singles-match': {
    ballRule: ownBall,
    measure: net,
    contest: match,
    recordedAs: 'match-play',
    sides: { count: exactly(2), balls: exactly(1), players: exactly(1) },
    allowance: { percent: 100, shares: null, source: appendixC },
    settings: matchSettings,
  },
  'four-ball-match': {
    ballRule: betterBall,
    measure: net,
    contest: match,
    recordedAs: 'match-play',
    sides: { count: exactly(2), balls: exactly(2), players: exactly(1) },
    allowance: { percent: 90, shares: null, source: appendixC },
    settings: matchSettings,
  },
  'three-ball-match': threeBallMatch(matchOfEachPair),
  'three-ball-match-from-lowest': threeBallMatch(match),
  'best-ball-match': {
    ballRule: betterBall,
    measure: net,
    contest: match,
    recordedAs: 'match-play',
    sides: { count: exactly(2), balls: { min: 1, max: 3 }, players: exactly(1), isOneAgainstSeveral: true },
    allowance: { percent: 100, shares: null, source: 'common practice; no body publishes one' },
    settings: matchSettings,
  },
  'foursomes-match': oneBallMatch('foursomes'),
  'greensomes-match': oneBallMatch('greensomes'),
  'chapman-match': oneBallMatch('chapman'),
}
