import { noMethods } from '#core/formats/game-methods.ts'
import { acceptedAs, type HandicapEdition, handicapEditions } from '#core/handicap/acceptable-holes.ts'
import { notPlayedMethods } from '#core/handicap/adjusted-gross.ts'
import { roundHalfUp } from '#core/values/fraction.ts'
import type { TeeRatings } from './facts.ts'
import { orderOfBall, teeOf } from './game-input-of.ts'
import { mainGameOf } from './games-of.ts'
import { handicapOf, ratingsOfRound } from './handicap-of.ts'
import type { AdjustedScore, BallHandicapping, CourseHandicapFound, HandicappingGap } from './handicapping.ts'
import { handicappingHoles, whyNoScore } from './handicapping-holes.ts'
import { adjustedScore } from './handicapping-score.ts'
import type { Ball, Outing, Player } from './outing.ts'

/**
 * A ball's score for handicapping: adjusted gross and differential. A missing rating closes the differential alone.
 * Source: Rules of Handicapping, rules 2.2, 3.1 to 3.3 and 5.1; R&A and USGA; 2020 and 2024.
 */
export function handicappingOf(outing: Outing, ball: Ball): BallHandicapping {
  const player = onlyPlayer(outing, ball)
  const found = courseHandicapOf(outing, ball, player)
  const holes = handicappingHoles(outing, ball, found)
  const holesPlayed = holes.filter(({ score }) => score !== null && score !== 'not-played').length
  const accepted = (edition: HandicapEdition) => acceptedAs(edition, holesPlayed, player?.handicap !== null)
  const given = outing.notes.playingConditions?.strokes ?? null
  const head = {
    ball: ball.id,
    player: player?.id ?? null,
    unofficial: true,
    courseHandicap: found.kind === 'known' ? found.strokes : null,
    holesPlayed,
    acceptedAs: { '2020': accepted('2020'), '2024': accepted('2024') },
    playingConditions: { given, used: given ?? 0 },
    holes,
  } as const
  const open = [
    ...(found.kind === 'gap' ? [gap(found.code)] : []),
    ...(outing.rules ? [] : [gap('not under the rules')]),
    ...(holes.length < outing.length ? [gap('course incomplete')] : []),
    ...holes.filter(({ score }) => score === null).map(({ key }) => gap(whyNoScore(outing, ball, key), key)),
  ]
  if (open.length > 0) return { ...head, scores: [], gaps: open }
  const whole = outing.length === 18 ? 'eighteen-hole-score' : 'nine-hole-score'
  const isEnough = handicapEditions.some(edition => head.acceptedAs[edition] === whole)
  const ratings = player === null ? null : ratingsOfRound(teeOf(outing, player), orderOfBall(outing, ball).round)
  const scores = notPlayedMethods.map(method =>
    adjustedScore(holes, head.courseHandicap, method, isEnough ? ratings : null, head.playingConditions.used),
  )
  return { ...head, scores, gaps: gapsOf(outing, player, scores, isEnough, ratings) }
}

const gap = (code: HandicappingGap['code'], hole: HandicappingGap['hole'] = null): HandicappingGap => ({ code, hole })

/** The player of a ball that nobody else plays. */
function onlyPlayer(outing: Outing, { players }: Ball): Player | null {
  const [id, ...partners] = players
  return id === undefined || partners.length > 0 ? null : (outing.players.get(id) ?? null)
}

function courseHandicapOf(outing: Outing, ball: Ball, player: Player | null): CourseHandicapFound {
  if (player === null) return { kind: 'gap', code: 'several players' }
  if (player.handicap === null) return { kind: 'none' }
  const main = mainGameOf(outing.games, outing.namedMain, ball.group)
  const { round } = orderOfBall(outing, ball)
  const found = handicapOf(player, teeOf(outing, player), round, main?.methods ?? noMethods)
  if (found.kind === 'course') return { kind: 'known', strokes: roundHalfUp(found.exact) }
  // Strokes agreed for the day's games say nothing of a Course Handicap.
  if (found.kind === 'plain') return { kind: 'gap', code: 'handicap missing' }
  return { kind: 'gap', code: codeOfGap[found.code] ?? 'handicap missing' }
}

const codeOfGap: Readonly<Record<string, HandicappingGap['code']>> = {
  'tee missing': 'tee missing',
  'rating missing': 'rating missing',
  'setting missing': 'setting missing',
}

/** What a whole score lacks for its differentials. */
function gapsOf(
  outing: Outing,
  player: Player | null,
  scores: readonly AdjustedScore[],
  isEnough: boolean,
  ratings: TeeRatings | null,
): HandicappingGap[] {
  const isExpectedNeeded = outing.length === 9 || scores.some(({ holesLeftOut }) => holesLeftOut > 0)
  return [
    ...(isEnough ? [] : [gap('too few holes')]),
    ...(ratings === null
      ? [gap(player !== null && teeOf(outing, player) === null ? 'tee missing' : 'rating missing')]
      : []),
    ...(isExpectedNeeded ? [gap('expected score not public')] : []),
  ]
}
