import type { FormatName } from '#core/formats/format-names.ts'
import type { ProposedAllowance } from '#core/formats/format-row.ts'
import { type GameMethods, type GameSetting, missingMeans, noMethods } from '#core/formats/game-methods.ts'
import { formatTable } from '#core/formats/table.ts'
import type { BallId, GameId, GroupId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import type { FactKind } from './facts.ts'
import { makeKey } from './keys.ts'

/** The kind of fact that holds each method of a game. */
export const factOfMethod = {
  allowancePercent: 'gameAllowance',
  rounding: 'gameRounding',
  courseHandicap: 'gameCourseHandicap',
  nineHoleIndex: 'gameNineHoleIndex',
  matchStrokes: 'gameMatchStrokes',
  sideStrokes: 'gameSideStrokes',
  handicapShares: 'gameHandicapShares',
  mixedTees: 'gameMixedTees',
  countingBalls: 'gameCountingBalls',
  shortTeam: 'gameShortTeam',
  drawnCard: 'gameDrawnCard',
  maximumScore: 'gameMaximumScore',
  skins: 'gameSkins',
  skinsLeft: 'gameSkinsLeft',
  presses: 'gamePresses',
  ties: 'gameTies',
} as const satisfies Record<GameSetting, FactKind>

/** Proposed where the format's row asks for them. */
const proposals: Partial<GameMethods> = {
  sideStrokes: 'from-rounded-side-handicaps',
  mixedTees: 'one-tee-par',
  skins: 'carry-over',
  presses: 'none',
}

/**
 * What a new game proposes, for people to see and change: the format's recommended allowance and the methods of the
 * Rules of Handicapping 2024. They are written into the game's facts; the fold fills in nothing. The allowance follows the
 * number of balls that count, where somebody has named one.
 */
export function defaultGameMethods(format: FormatName, named: Partial<GameMethods> = {}): GameMethods {
  const { allowance, settings, proposes } = formatTable[format]
  const asked = Object.entries(proposals).filter(([name]) => settings.some(each => each === name))
  return {
    ...noMethods,
    ...Object.fromEntries(asked),
    ...proposes,
    // A ball of several has its allowance in the shares.
    allowancePercent: allowance.shares === null ? percentOf(allowance, named.countingBalls ?? null) : null,
    handicapShares: allowance.shares,
    rounding: 'course-handicap-unrounded',
    courseHandicap: 'with-rating-minus-par',
    nineHoleIndex: 'half-index-unrounded',
    matchStrokes: 'from-lowest-playing-handicap',
  }
}

const meaning: Partial<GameMethods> = missingMeans

/** The methods by name, with what the missing ones mean where a new game of the format names them. */
export function methodsMeant(format: FormatName, methods: GameMethods): GameMethods {
  const asked = defaultGameMethods(format)
  const meant = Object.entries(missingMeans).filter(
    ([name]) => methods[name as GameSetting] === null && asked[name as GameSetting] !== null,
  )
  return { ...methods, ...Object.fromEntries(meant) }
}

function percentOf({ percent, byCount }: ProposedAllowance, countingBalls: GameMethods['countingBalls']): number {
  const [count = 0, ...others] = countingBalls ?? []
  return others.length > 0 ? percent : (byCount?.[count - 1] ?? percent)
}

export interface NewGame {
  readonly id: GameId
  /** Null for a game of the whole outing. */
  readonly group: GroupId | null
  readonly format: FormatName
  readonly sides: readonly (readonly BallId[])[]
  readonly methods: GameMethods
}

/** A game with every method that is set named. */
export function gameFacts(game: NewGame): { readonly key: string; readonly value: Json }[] {
  const at = game.group === null ? { game: game.id } : { group: game.group, game: game.id }
  const methods = (Object.keys(factOfMethod) as GameSetting[]).flatMap(name => {
    const value = game.methods[name]
    return value === null || value === meaning[name] ? [] : [[factOfMethod[name], value as unknown as Json] as const]
  })
  const values: readonly (readonly [FactKind, Json])[] = [
    ['gameFormat', game.format],
    ['gameSides', game.sides],
    ...methods,
  ]
  return values.map(([kind, value]) => ({ key: makeKey(kind, at), value }))
}
