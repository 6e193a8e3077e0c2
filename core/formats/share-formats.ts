import { ownBall } from '#core/formats/ball-rules/own-ball.ts'
import { gross } from '#core/formats/measures/gross.ts'
import { net } from '#core/formats/measures/net.ts'
import type { FormatName } from './format-names.ts'
import { atLeast, customary, exactly, type FormatRow, handicapSettings, matchSettings } from './format-row.ts'
import type { SplitPointScale } from './split-points.ts'

/** Two players or more, each for themselves. */
const skinsGame = {
  ballRule: ownBall,
  contest: 'skins',
  recordedAs: 'match-play',
  sides: { count: atLeast(2), balls: exactly(1), players: exactly(1) },
  proposes: { skinsLeft: 'unclaimed' },
} as const

/** Three players, each for themselves. */
const splitPointsGame = (scale: SplitPointScale): FormatRow => ({
  ballRule: ownBall,
  measure: net,
  contest: scale,
  recordedAs: 'match-play',
  sides: { count: exactly(3), balls: exactly(1), players: exactly(1) },
  allowance: customary,
  settings: matchSettings,
})

/** Every hole is shared out. */
export const shareFormats = {
  skins: { ...skinsGame, measure: net, allowance: customary, settings: [...handicapSettings, 'skins'] },
  'skins-gross': {
    ...skinsGame,
    measure: gross,
    allowance: { percent: 0, shares: null, source: 'no handicap enters' },
    settings: ['skins'],
  },
  'nine-points': splitPointsGame('nine-points'),
  'split-sixes': splitPointsGame('split-sixes'),
} satisfies Partial<Record<FormatName, FormatRow>>
