import { betterBall } from '#core/formats/ball-rules/better-ball.ts'
import { ownBall } from '#core/formats/ball-rules/own-ball.ts'
import { match } from '#core/formats/contests/match.ts'
import { total } from '#core/formats/contests/total.ts'
import { gross } from '#core/formats/measures/gross.ts'
import { net } from '#core/formats/measures/net.ts'
import { points } from '#core/formats/measures/points.ts'
import type { FormatName } from './format-names.ts'
import type { Contest } from './game-input.ts'
import type { GameSetting } from './game-methods.ts'
import type { BallRule, Measure } from './parts.ts'

/** A format: ball rule x measure x contest. Adding one is adding a row. */
export interface FormatRow {
  readonly ballRule: BallRule
  readonly measure: Measure
  readonly contest: Contest
  /** `count` null takes any number of sides; each has so many balls, and each ball so many players. */
  readonly sides: { readonly count: number | null; readonly balls: number; readonly players: number }
  /** What a new game proposes, in whole per cent; `shares` of the partners of one ball, the lowest handicap first. */
  readonly allowance: {
    readonly percent: number
    readonly shares: readonly number[] | null
    readonly source: string
  }
  readonly settings: readonly GameSetting[]
}

const appendixC = 'Rules of Handicapping, Appendix C; R&A and USGA; 2024'
const handicapSettings: readonly GameSetting[] = ['allowancePercent', 'rounding', 'nineHoleIndex']
const matchSettings: readonly GameSetting[] = [...handicapSettings, 'matchStrokes']

export const formatTable: Readonly<Record<FormatName, FormatRow>> = {
  'stroke-play-gross': {
    ballRule: ownBall,
    measure: gross,
    contest: total,
    sides: { count: null, balls: 1, players: 1 },
    allowance: { percent: 0, shares: null, source: 'no handicap enters' },
    settings: [],
  },
  'stroke-play-net': {
    ballRule: ownBall,
    measure: net,
    contest: total,
    sides: { count: null, balls: 1, players: 1 },
    allowance: { percent: 95, shares: null, source: appendixC },
    settings: handicapSettings,
  },
  stableford: {
    ballRule: ownBall,
    measure: points,
    contest: total,
    sides: { count: null, balls: 1, players: 1 },
    allowance: { percent: 95, shares: null, source: appendixC },
    settings: handicapSettings,
  },
  'singles-match': {
    ballRule: ownBall,
    measure: net,
    contest: match,
    sides: { count: 2, balls: 1, players: 1 },
    allowance: { percent: 100, shares: null, source: appendixC },
    settings: matchSettings,
  },
  'four-ball-match': {
    ballRule: betterBall,
    measure: net,
    contest: match,
    sides: { count: 2, balls: 2, players: 1 },
    allowance: { percent: 90, shares: null, source: appendixC },
    settings: matchSettings,
  },
}
