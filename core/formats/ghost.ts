import { allowanceTaken } from '#core/handicap/playing-handicap.ts'
import { type Fraction, fraction, plus, roundHalfUp, zero } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundBall } from './game-input.ts'
import type { BallStrokes } from './game-result.ts'
import { type KnownHandicap, ownStrokes, type StrokeMethods, strokesByHole } from './game-strokes.ts'
import type { Happenings } from './happenings.ts'

/**
 * What a team that is one ball short of the largest has instead: nothing, a ghost off the average of its players' exact
 * or of their whole Playing Handicaps, or one card that is drawn for every short team.
 */
export const shortTeamMethods = ['those-there', 'ghost-of-unrounded', 'ghost-of-rounded', 'drawn-card'] as const
export type ShortTeamMethod = (typeof shortTeamMethods)[number]

/** A ghost: its strokes, laid on the holes of each player whose score it takes in turn. */
export interface Ghost {
  readonly playingHandicap: number
  readonly strokes: ReadonlyMap<BallId, BallStrokes>
}

/** The balls of a side but for those that did not come. */
export const ballsThere = ({ absences }: Happenings, side: readonly BallId[]): readonly BallId[] =>
  side.filter(ball => {
    const absence = absences.get(ball)
    return absence === undefined || absence.joinedAt !== null || absence.leftAt !== null
  })

/** One short of the largest, with somebody there. */
export function isShort(
  happenings: Happenings,
  sides: readonly (readonly BallId[])[],
  side: readonly BallId[],
): boolean {
  const there = ballsThere(happenings, side).length
  return there > 0 && there === Math.max(...sides.map(each => each.length)) - 1
}

/** What a ball plays off and what its tee adds. */
export interface GhostPart {
  readonly handicap: KnownHandicap
  readonly added: number
  readonly ball: SoundBall
}

/**
 * The ghost of a team: it plays off the average of its players, exact or whole as the game says, a half upward.
 * Source: common practice; a par-three club's page on the method, second-hand. Which figures are averaged is for the terms.
 */
export function ghostOf(
  parts: ReadonlyMap<BallId, GhostPart>,
  method: ShortTeamMethod,
  methods: StrokeMethods,
): Ghost | null {
  if (method !== 'ghost-of-unrounded' && method !== 'ghost-of-rounded') return null
  const figures = [...parts.values()].map(({ handicap, added }) => {
    const isExact = method === 'ghost-of-unrounded' && handicap.kind === 'course'
    const own = isExact
      ? allowanceTaken(handicap.exact, methods.allowancePercent, methods.rounding)
      : fraction(ownStrokes(handicap, methods))
    return plus(own, fraction(added))
  })
  const playingHandicap = roundHalfUp(averageOf(figures))
  const strokes = [...parts].map(([id, { ball }]): [BallId, BallStrokes] => [
    id,
    {
      courseHandicap: null,
      playingHandicap,
      strokes: playingHandicap,
      forTeePar: 0,
      byHole: strokesByHole(playingHandicap, ball.order),
    },
  ])
  return { playingHandicap, strokes: new Map(strokes) }
}

const averageOf = (figures: readonly Fraction[]): Fraction => {
  const { numerator, denominator } = figures.reduce(plus, zero)
  return fraction(numerator, denominator * Math.max(1, figures.length))
}
