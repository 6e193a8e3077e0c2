import type { CountbackMethod } from '#core/card/countback-methods.ts'
import { allBalls } from '#core/formats/ball-rules/all-balls.ts'
import { bestBalls } from '#core/formats/ball-rules/best-balls.ts'
import { betterBall } from '#core/formats/ball-rules/better-ball.ts'
import { ownBall } from '#core/formats/ball-rules/own-ball.ts'
import { againstPar } from '#core/formats/measures/against-par.ts'
import { cappedNet, cappedStrokes } from '#core/formats/measures/capped.ts'
import { gross } from '#core/formats/measures/gross.ts'
import { net } from '#core/formats/measures/net.ts'
import { points } from '#core/formats/measures/points.ts'
import { playerAllowances, sideAllowances } from '#core/handicap/allowance.ts'
import type { FormatName } from './format-names.ts'
import {
  appendixC,
  atLeast,
  between,
  exactly,
  type FormatRow,
  handicapSettings,
  type ProposedAllowance,
  type Range,
  type SideShape,
  shareSettings,
} from './format-row.ts'
import type { TieTerms } from './game-methods.ts'

/** Any number of sides. */
const sidesOf = (balls: Range, players: Range = exactly(1)): SideShape => ({ count: atLeast(1), balls, players })
const individual = sidesOf(exactly(1))
const fourBall = sidesOf(exactly(2))
const team = sidesOf(between(2, 9))

const percent = (figure: number, source = appendixC): ProposedAllowance => ({ percent: figure, shares: null, source })
const noHandicap = percent(0, 'no handicap enters')

/** Committee Procedures 5A(6), R&A, quoted second-hand: the last nine, six, three and one hole. */
const countbackBy = (method: CountbackMethod): { readonly ties: TieTerms } => ({
  ties: { method, scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'shared' },
})

const capped = { ballRule: ownBall, contest: 'total', recordedAs: 'maximum-score', sides: individual } as const
const maximumScore = { kind: 'net-double-bogey' } as const
const strokesOfNet = { measure: net, contest: 'total', recordedAs: 'stroke-play' } as const
const pointsOfNet = { measure: points, contest: 'total', recordedAs: 'stableford' } as const
const holesOfNet = { measure: againstPar, contest: 'total', recordedAs: 'par-bogey' } as const
const asTheyFall = countbackBy('strokes-as-they-fall')
const byPoints = countbackBy('points')

/** Several players' one ball; a ball of two to four where there are shares for each number. */
function oneBall(shares: ProposedAllowance['shares'], players: Range) {
  const allowance: ProposedAllowance = { percent: 100, shares, source: appendixC }
  return { ballRule: ownBall, sides: sidesOf(exactly(1), players), allowance, settings: shareSettings } as const
}
const pair = (shares: readonly number[]) => oneBall([shares], exactly(2))
const foursomes = { ...pair(sideAllowances.foursomes), isInTurn: true } as const
const greensomes = pair(sideAllowances.greensomes)
const chapman = pair(sideAllowances.chapman)
const scramble = oneBall(
  [sideAllowances['scramble-of-2'], sideAllowances['scramble-of-3'], sideAllowances['scramble-of-4']],
  between(2, 4),
)

const bestOfFour: ProposedAllowance = {
  ...percent(playerAllowances['best-2-of-4']),
  byCount: [
    playerAllowances['best-1-of-4'],
    playerAllowances['best-2-of-4'],
    playerAllowances['best-3-of-4'],
    playerAllowances['all-4-of-4'],
  ],
}
const bestOfTeam = {
  ballRule: bestBalls,
  sides: team,
  allowance: bestOfFour,
  settings: [...handicapSettings, 'countingBalls'],
} as const
const teamOfTwo = { countingBalls: [2], shortTeam: 'those-there' } as const
const ofTwo = {
  ballRule: allBalls,
  sides: sidesOf(exactly(2)),
  allowance: percent(playerAllowances['total-of-2-match'], `${appendixC}, printed for the match`),
  settings: handicapSettings,
} as const

/** The formats in which every side adds up its holes. */
export const totalFormats = {
  'stroke-play-gross': {
    ballRule: ownBall,
    measure: gross,
    contest: 'total',
    recordedAs: 'stroke-play',
    sides: individual,
    allowance: noHandicap,
    settings: [],
    proposes: countbackBy('gross'),
  },
  'stroke-play-net': {
    ballRule: ownBall,
    ...strokesOfNet,
    sides: individual,
    allowance: percent(playerAllowances['individual-stroke-play']),
    settings: handicapSettings,
    proposes: countbackBy('share-of-handicap'),
  },
  'maximum-score-gross': {
    ...capped,
    measure: cappedStrokes,
    allowance: percent(playerAllowances['individual-maximum-score']),
    settings: ['maximumScore', ...handicapSettings],
    proposes: { maximumScore, ...countbackBy('gross') },
  },
  'maximum-score-net': {
    ...capped,
    measure: cappedNet,
    allowance: percent(playerAllowances['individual-maximum-score']),
    settings: ['maximumScore', ...handicapSettings],
    proposes: { maximumScore, ...countbackBy('share-of-handicap') },
  },
  stableford: {
    ballRule: ownBall,
    ...pointsOfNet,
    sides: individual,
    allowance: percent(playerAllowances['individual-stableford']),
    settings: handicapSettings,
    proposes: byPoints,
  },
  'par-bogey': {
    ballRule: ownBall,
    ...holesOfNet,
    sides: individual,
    allowance: percent(playerAllowances['individual-par-bogey']),
    settings: handicapSettings,
    proposes: byPoints,
  },
  'four-ball-stroke-play': {
    ballRule: betterBall,
    ...strokesOfNet,
    sides: fourBall,
    allowance: percent(playerAllowances['four-ball-stroke-play']),
    settings: handicapSettings,
    proposes: asTheyFall,
  },
  'four-ball-stableford': {
    ballRule: betterBall,
    ...pointsOfNet,
    sides: fourBall,
    allowance: percent(playerAllowances['four-ball-stableford']),
    settings: handicapSettings,
    proposes: byPoints,
  },
  'four-ball-par-bogey': {
    ballRule: betterBall,
    ...holesOfNet,
    sides: fourBall,
    allowance: percent(playerAllowances['four-ball-par-bogey']),
    settings: handicapSettings,
    proposes: byPoints,
  },
  'foursomes-stroke-play': { ...foursomes, ...strokesOfNet, proposes: countbackBy('share-of-handicap') },
  'foursomes-stableford': { ...foursomes, ...pointsOfNet, proposes: byPoints },
  'greensomes-stroke-play': { ...greensomes, ...strokesOfNet, proposes: countbackBy('share-of-handicap') },
  'greensomes-stableford': { ...greensomes, ...pointsOfNet, proposes: byPoints },
  'chapman-stroke-play': { ...chapman, ...strokesOfNet, proposes: countbackBy('share-of-handicap') },
  'chapman-stableford': { ...chapman, ...pointsOfNet, proposes: byPoints },
  'scramble-stroke-play': { ...scramble, ...strokesOfNet, proposes: countbackBy('share-of-handicap') },
  'best-balls-stroke-play': { ...bestOfTeam, ...strokesOfNet, proposes: { ...teamOfTwo, ...asTheyFall } },
  'best-balls-stableford': { ...bestOfTeam, ...pointsOfNet, proposes: { ...teamOfTwo, ...byPoints } },
  waltz: { ...bestOfTeam, ...pointsOfNet, proposes: { ...teamOfTwo, countingBalls: [1, 2, 3], ...byPoints } },
  'total-of-two-stroke-play': { ...ofTwo, ...strokesOfNet, proposes: asTheyFall },
  'total-of-two-stableford': { ...ofTwo, ...pointsOfNet, proposes: byPoints },
} as const satisfies Partial<Record<FormatName, FormatRow>>
