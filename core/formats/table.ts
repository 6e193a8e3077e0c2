import { betterBall } from '#core/formats/ball-rules/better-ball.ts'
import { ownBall } from '#core/formats/ball-rules/own-ball.ts'
import { match, matchOfEachPair } from '#core/formats/contests/match.ts'
import { total } from '#core/formats/contests/total.ts'
import { gross } from '#core/formats/measures/gross.ts'
import { net } from '#core/formats/measures/net.ts'
import { points } from '#core/formats/measures/points.ts'
import { type SideAllowance, sideAllowances } from '#core/handicap/allowance.ts'
import type { FormatName } from './format-names.ts'
import type { Contest } from './game-input.ts'
import type { GameMethods, GameSetting } from './game-methods.ts'
import type { BallRule, Measure } from './parts.ts'

/** Both ends belong to it; null has no end. */
export interface Range {
  readonly min: number
  readonly max: number | null
}

/** How many sides a game has, how many balls each of them, and how many players each ball. */
export interface SideShape {
  readonly count: Range
  readonly balls: Range
  readonly players: Range
  /** One ball alone against a side of several. */
  readonly isOneAgainstSeveral?: true
}

const exactly = (n: number): Range => ({ min: n, max: n })
const anyNumber: Range = { min: 1, max: null }

/** Any number of sides of one player each. */
const individual: SideShape = { count: anyNumber, balls: exactly(1), players: exactly(1) }

/** A format: ball rule x measure x contest. Adding one is adding a row. */
export interface FormatRow {
  readonly ballRule: BallRule
  readonly measure: Measure
  readonly contest: Contest
  readonly sides: SideShape
  /**
   * What a new game proposes, in whole per cent; `shares` of the partners of one ball, the lowest handicap first, for each
   * number of players that a ball may have.
   */
  readonly allowance: {
    readonly percent: number
    readonly shares: GameMethods['handicapShares']
    readonly source: string
  }
  readonly settings: readonly GameSetting[]
}

const appendixC = 'Rules of Handicapping, Appendix C; R&A and USGA; 2024'
const handicapSettings: readonly GameSetting[] = ['allowancePercent', 'rounding', 'nineHoleIndex']
const matchSettings: readonly GameSetting[] = [...handicapSettings, 'matchStrokes']
const oneBallSettings: readonly GameSetting[] = ['handicapShares', 'mixedTees', 'rounding', 'nineHoleIndex']

/** A match of two sides that play one ball each, with the shares of its partners' Course Handicaps. */
const oneBallMatch = (allowance: SideAllowance): FormatRow => ({
  ballRule: ownBall,
  measure: net,
  contest: match,
  sides: { count: exactly(2), balls: exactly(1), players: exactly(2) },
  allowance: { percent: 100, shares: [sideAllowances[allowance]], source: appendixC },
  settings: [...oneBallSettings, 'sideStrokes'],
})

/** Three balls, each in a match with each other one: Rules of Golf, rule 21.4; R&A and USGA; 2023. */
const threeBallMatch = (contest: Contest): FormatRow => ({
  ballRule: ownBall,
  measure: net,
  contest,
  sides: { count: exactly(3), balls: exactly(1), players: exactly(1) },
  allowance: { percent: 100, shares: null, source: appendixC },
  settings: matchSettings,
})

export const formatTable: Readonly<Record<FormatName, FormatRow>> = {
  'stroke-play-gross': {
    ballRule: ownBall,
    measure: gross,
    contest: total,
    sides: individual,
    allowance: { percent: 0, shares: null, source: 'no handicap enters' },
    settings: [],
  },
  'stroke-play-net': {
    ballRule: ownBall,
    measure: net,
    contest: total,
    sides: individual,
    allowance: { percent: 95, shares: null, source: appendixC },
    settings: handicapSettings,
  },
  stableford: {
    ballRule: ownBall,
    measure: points,
    contest: total,
    sides: individual,
    allowance: { percent: 95, shares: null, source: appendixC },
    settings: handicapSettings,
  },
  'singles-match': {
    ballRule: ownBall,
    measure: net,
    contest: match,
    sides: { count: exactly(2), balls: exactly(1), players: exactly(1) },
    allowance: { percent: 100, shares: null, source: appendixC },
    settings: matchSettings,
  },
  'four-ball-match': {
    ballRule: betterBall,
    measure: net,
    contest: match,
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
    sides: { count: exactly(2), balls: { min: 1, max: 3 }, players: exactly(1), isOneAgainstSeveral: true },
    allowance: { percent: 100, shares: null, source: 'common practice; no body publishes one' },
    settings: matchSettings,
  },
  'foursomes-match': oneBallMatch('foursomes'),
  'greensomes-match': oneBallMatch('greensomes'),
  'chapman-match': oneBallMatch('chapman'),
}
