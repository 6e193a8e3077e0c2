import type { HoleKey } from '#core/card/score.ts'
import { type BallInGame, ballInGame, type HoleOfBall, holeOfBall, notesOfSide } from '#core/formats/ball-hole.ts'
import { sideValueOf } from '#core/formats/counting-balls.ts'
import { type Contest, type Earlier, type InputHole, type SoundGame, scheduledOf } from '#core/formats/game-input.ts'
import type { DrivesUsed, HoleNote, SideHole, TotalLine } from '#core/formats/game-result.ts'
import type { BallHole } from '#core/formats/parts.ts'
import { lineOfPlaced, placeLines, type UnplacedLine } from '#core/formats/places.ts'
import { penaltyOnRound } from '#core/formats/round-penalty.ts'
import { drawnFor, guestsOn } from '#core/formats/short-team.ts'
import { countOn, isOutOfPlay } from '#core/formats/side-hole.ts'
import { splitTies } from '#core/formats/ties.ts'
import type { BallId } from '#core/values/ids.ts'

/** Every side adds up its scheduled holes; the table is in order of the sums. */
export const total: Contest = (game, earlier) => {
  const known = linesKept(earlier)
  const lines = game.sides.map(side => known.get(side) ?? lineOf(game, side))
  const { lines: placed, ties } = splitTies(game, placeLines(lines, game.measure.unit))
  return {
    kind: 'total',
    game: game.game,
    format: game.format,
    unit: game.measure.unit,
    strokes: game.strokes,
    gaps: game.gaps,
    lines: placed.map(lineOfPlaced),
    ties,
  }
}

/** The lines of sides whose scores are as they were, by the very list of their balls. */
function linesKept(earlier: Earlier | null): ReadonlyMap<readonly BallId[], UnplacedLine> {
  if (earlier?.result.kind !== 'total') return new Map()
  const isChanged = (ball: BallId): boolean => earlier.changed.has(ball)
  const kept = earlier.result.lines.filter(
    ({ side, drawnCard }) => !side.some(isChanged) && !(drawnCard !== null && isChanged(drawnCard)),
  )
  return new Map(kept.map(line => [line.side, line]))
}

function lineOf(game: SoundGame, side: readonly BallId[]): UnplacedLine {
  const isStrokes = game.measure.unit === 'strokes'
  const withdrawn = withdrawnSide(game, side)
  const penalty = penaltyOnRound(game, side)
  const { byHole, notes, unsettled, ...sums } = sumsOf(game, side)
  const isNoReturn = isStrokes && (withdrawn !== null || sums.isWithout)
  const sum = sums.value + penalty
  return {
    side,
    byHole,
    notes,
    total: isNoReturn ? null : sum,
    overPar: isNoReturn || !isStrokes ? null : sum - sums.level,
    penalty,
    through: sums.through,
    isFinished: sums.isFinished,
    unsettled,
    isNoReturn,
    withdrawn,
    disqualified: disqualifiedSide(game, side),
    ghost: game.ghosts.get(side)?.playingHandicap ?? null,
    drawnCard: drawnFor(game, side),
    drives: side.flatMap(ball => drivesOf(game, ball)),
  }
}

/** A side's holes, and what they come to. */
function sumsOf(game: SoundGame, side: readonly BallId[]) {
  const byHole = new Map<HoleKey, SideHole>()
  const notes = new Map<HoleKey, readonly HoleNote[]>()
  const unsettled: HoleKey[] = []
  const sums = { value: 0, level: 0, through: 0, isFinished: true, isWithout: false }
  const own = side.flatMap(ball => ballInGame(game, ball) ?? [])
  for (const { key } of scheduledHoles(game, side)) {
    const { hole, ofHole, written } = holeOf(game, side, own, key)
    byHole.set(key, hole)
    if (ofHole.length > 0) notes.set(key, ofHole)
    if (written === 'two') unsettled.push(key)
    if (written !== 'none' && hole.kind !== 'out') sums.through += 1
    if (hole.kind === 'value') {
      sums.value += hole.value
      sums.level += hole.level
    }
    if (hole.kind === 'none') sums.isWithout = true
    if (hole.kind === 'open' || hole.kind === 'two') sums.isFinished = false
  }
  return { byHole, notes, unsettled, ...sums }
}

const scheduledHoles = (game: SoundGame, [first]: readonly BallId[]): readonly InputHole[] =>
  first === undefined ? [] : scheduledOf(game.balls.get(first)?.order ?? [])

function holeOf(game: SoundGame, side: readonly BallId[], own: readonly BallInGame[], key: HoleKey) {
  const ofSide = own.map(ball => holeOfBall(game, ball, key))
  const written = writtenFor(ofSide)
  if (isOutOfPlay(game, key)) return { hole: out, ofHole: notesOfOut, written }
  const count = countOn(game, side, key)
  const guests = game.methods.shortTeam === null ? noGuests : guestsOn(game, side, key)
  const balls = guests.length === 0 ? ofSide : [...ofSide, ...guests]
  const value = sideValueOf(balls, count, game.measure)
  return { hole: guests.length === 0 ? value : namedOnce(value), ofHole: notesOfSide(balls, count), written }
}

const out: SideHole = { kind: 'out' }
const notesOfOut: readonly HoleNote[] = [{ code: 'out-of-play', ball: null }]
const noGuests: readonly BallHole[] = []

/** A ghost gives its value with the score of a ball that may count as well. */
const namedOnce = (value: SideHole): SideHole =>
  value.kind === 'value' ? { ...value, balls: [...new Set(value.balls)] } : value

/** Two scores of one of the balls are the side's. */
function writtenFor(balls: readonly HoleOfBall[]): HoleOfBall['written'] {
  const [first] = balls
  if (first !== undefined && balls.length === 1) return first.written
  if (balls.some(({ written }) => written === 'two')) return 'two'
  return balls.some(({ written }) => written === 'one') ? 'one' : 'none'
}

/** With every ball of it, for the first reason given. */
function withdrawnSide({ happenings }: SoundGame, side: readonly BallId[]): TotalLine['withdrawn'] {
  const absences = side.flatMap(ball => happenings.absences.get(ball) ?? [])
  const [first] = absences.filter(({ isWithdrawn }) => isWithdrawn)
  if (first === undefined || absences.length < side.length) return null
  return absences.every(({ isWithdrawn }) => isWithdrawn) ? { reason: first.reason } : null
}

/** By one of its balls, or only with all of them, as the ball rule says. */
function disqualifiedSide({ happenings, ballRule }: SoundGame, side: readonly BallId[]): TotalLine['disqualified'] {
  const found = happenings.disqualified.filter(({ hole, ball }) => hole === null && side.includes(ball))
  const [first] = found
  if (first === undefined) return null
  const isSideOut = ballRule.disqualifiedWith === 'side' || side.every(each => found.some(({ ball }) => ball === each))
  return isSideOut ? { reason: first.reason } : null
}

function drivesOf({ balls, happenings }: SoundGame, ball: BallId): DrivesUsed[] {
  const used = happenings.drives.get(ball)
  if (used === undefined) return []
  const ofHoles = [...used].flatMap(([key, player]) => (balls.get(ball)?.holes.get(key)?.isScheduled ? [player] : []))
  return (balls.get(ball)?.players ?? []).map(player => ({
    ball,
    player,
    count: ofHoles.filter(each => each === player).length,
  }))
}
