import { betterBall } from '#core/formats/ball-rules/better-ball.ts'
import { net } from '#core/formats/measures/net.ts'
import { playerAllowances } from '#core/handicap/allowance.ts'
import type { FormatName } from './format-names.ts'
import { appendixC, between, customary, exactly, type FormatRow, matchSettings } from './format-row.ts'

const betterBallOfNet = { ballRule: betterBall, measure: net, recordedAs: 'match-play' } as const

/** Games made of several matches. */
export const partsFormats = {
  nassau: {
    ...betterBallOfNet,
    contest: 'nassau',
    sides: { count: exactly(2), balls: between(1, 2), players: exactly(1) },
    allowance: customary,
    settings: [...matchSettings, 'presses'],
  },
  sixes: {
    ...betterBallOfNet,
    contest: 'sixes',
    sides: { count: exactly(4), balls: exactly(1), players: exactly(1), isInOrder: true },
    allowance: {
      percent: playerAllowances['four-ball-match'],
      shares: null,
      source: `${appendixC}, as for a four-ball match`,
    },
    settings: matchSettings,
  },
  'six-threes-match': {
    ...betterBallOfNet,
    contest: 'six-threes',
    sides: { count: between(2, 4), balls: between(1, 2), players: exactly(1) },
    allowance: { percent: 100, shares: null, source: 'our own game' },
    settings: matchSettings,
  },
} satisfies Partial<Record<FormatName, FormatRow>>
