import { allBalls } from '#core/formats/ball-rules/all-balls.ts'
import { betterBall } from '#core/formats/ball-rules/better-ball.ts'
import { ownBall } from '#core/formats/ball-rules/own-ball.ts'
import { net } from '#core/formats/measures/net.ts'
import { playerAllowances, type SideAllowance, sideAllowances } from '#core/handicap/allowance.ts'
import type { ContestName } from './contest-names.ts'
import type { FormatName } from './format-names.ts'
import { appendixC, between, customary, exactly, type FormatRow, matchSettings, shareSettings } from './format-row.ts'

const byNet = { measure: net, contest: 'match', recordedAs: 'match-play' } as const
const percent = (figure: number) => ({ percent: figure, shares: null, source: appendixC })

/** A match of two sides that play one ball each, with the shares of its partners' Course Handicaps. */
const oneBallMatch = (allowance: SideAllowance): FormatRow => ({
  ballRule: ownBall,
  ...byNet,
  sides: { count: exactly(2), balls: exactly(1), players: exactly(2) },
  allowance: { ...percent(100), shares: [sideAllowances[allowance]] },
  settings: [...shareSettings, 'sideStrokes'],
})

/** Three balls, each in a match with each other one: Rules of Golf, rule 21.4; R&A and USGA; 2023. */
const threeBallMatch = (contest: ContestName): FormatRow => ({
  ballRule: ownBall,
  ...byNet,
  contest,
  sides: { count: exactly(3), balls: exactly(1), players: exactly(1) },
  allowance: percent(playerAllowances['individual-match']),
  settings: matchSettings,
})

/** Hole by hole, side against side. */
export const matchFormats = {
  'singles-match': {
    ballRule: ownBall,
    ...byNet,
    sides: { count: exactly(2), balls: exactly(1), players: exactly(1) },
    allowance: percent(playerAllowances['individual-match']),
    settings: matchSettings,
  },
  'four-ball-match': {
    ballRule: betterBall,
    ...byNet,
    sides: { count: exactly(2), balls: exactly(2), players: exactly(1) },
    allowance: percent(playerAllowances['four-ball-match']),
    settings: matchSettings,
  },
  'three-ball-match': threeBallMatch('match-of-each-pair'),
  'three-ball-match-from-lowest': threeBallMatch('match'),
  'best-ball-match': {
    ballRule: betterBall,
    ...byNet,
    sides: { count: exactly(2), balls: between(1, 3), players: exactly(1), isOneAgainstSeveral: true },
    allowance: customary,
    settings: matchSettings,
  },
  'total-of-two-match': {
    ballRule: allBalls,
    ...byNet,
    sides: { count: exactly(2), balls: exactly(2), players: exactly(1) },
    allowance: percent(playerAllowances['total-of-2-match']),
    settings: matchSettings,
  },
  'foursomes-match': { ...oneBallMatch('foursomes'), isInTurn: true },
  'greensomes-match': oneBallMatch('greensomes'),
  'chapman-match': oneBallMatch('chapman'),
} satisfies Partial<Record<FormatName, FormatRow>>
