import type { Card, CardScore } from '#core/card/card.ts'
import type { HoleKey, HoleScore } from '#core/card/score.ts'
import { scoresIn } from '#core/card/settle-card.ts'
import { maximumOf } from '#core/formats/measures/capped.ts'
import type { BallId } from '#core/values/ids.ts'
import type { InputHole, SoundGame } from './game-input.ts'
import type { HoleNote, HoleNoteCode } from './game-result.ts'
import type { Penalty } from './happenings.ts'
import type { BallHole, Measure, MeasuredHole, Worth } from './parts.ts'
import { isAbsent, isDisqualified, isOutOfHole } from './taking-part.ts'

/** A ball of a game with all that bears on its holes, found once for all of them. */
export interface BallInGame {
  readonly ball: BallId
  readonly holes: ReadonlyMap<HoleKey, InputHole>
  readonly card: Card
  readonly strokes: ReadonlyMap<HoleKey, number>
  readonly teePar: ReadonlyMap<HoleKey, number>
  readonly penalties: readonly Penalty[]
  /** False for a ball that takes part in every hole: nearly always. */
  readonly mayMiss: boolean
}

/** With what is written for it, whatever it is worth. */
export interface HoleOfBall extends BallHole {
  readonly written: CardScore['kind']
}

const none: ReadonlyMap<HoleKey, number> = new Map()

/** Null for a ball that the game does not have. */
export function ballInGame(game: SoundGame, ball: BallId): BallInGame | null {
  const found = game.balls.get(ball)
  if (found === undefined) return null
  const { absences, disqualified, penalties } = game.happenings
  return {
    ball,
    holes: found.holes,
    card: found.card,
    strokes: game.strokes.get(ball)?.byHole ?? none,
    teePar: game.teePar.get(ball) ?? none,
    penalties: penalties.length === 0 ? penalties : penalties.filter(each => each.ball === ball),
    mayMiss: absences.has(ball) || disqualified.some(each => each.ball === ball),
  }
}

/** A hole for a ball with the game's strokes on it; null where the ball does not play it. */
export function measuredHole(
  { methods }: SoundGame,
  { holes, strokes }: BallInGame,
  key: HoleKey,
): MeasuredHole | null {
  const hole = holes.get(key)
  return hole === undefined ? null : { par: hole.par, strokes: strokes.get(key) ?? 0, maximum: methods.maximumScore }
}

/** What gross strokes are worth; `null` is no score. */
export const worthOf = (measure: Measure, at: MeasuredHole, gross: number | null): Worth => ({
  value: measure.valueOf(at, gross),
  isHoled: gross !== null,
})

/** What a ball has on a hole, by the hole's key. */
export function ballHoleOf(game: SoundGame, ball: BallId, key: HoleKey): HoleOfBall {
  const own = ballInGame(game, ball)
  return own === null ? notPlayed(ball) : holeOfBall(game, own, key)
}

const notPlayed = (ball: BallId): HoleOfBall => ({ ball, worths: [], level: 0, notes: noNotes, written: 'none' })

/** What a ball has on a hole of a total: its scores measured, or what happened to it instead. */
export function holeOfBall(game: SoundGame, own: BallInGame, key: HoleKey): HoleOfBall {
  const { ball, card } = own
  const at = measuredHole(game, own, key)
  if (at === null) return notPlayed(ball)
  const { measure, happenings } = game
  const found = card.scores.get(key)
  const written = found?.kind ?? 'none'
  const level = at.par - (own.teePar.get(key) ?? 0)
  const withOne = (gross: number | null, code: HoleNoteCode): HoleOfBall => ({
    ball,
    level,
    worths: [worthOf(measure, at, gross)],
    notes: [{ code, ball }],
    written,
  })
  const missed = own.mayMiss ? reasonMissed(game, ball, key) : null
  if (missed !== null) return withOne(null, missed)
  if (happenings.holesOut.get(key)?.counts === 'net-par')
    return withOne(at.par + (measure.isNet ? at.strokes : 0), 'net-par')
  // What a card lacks once the desk has closed it is no score, as it stands on the card.
  if (written === 'none' && card.isClosed) return withOne(null, 'blank')
  const penalty = own.penalties.length === 0 ? 0 : penaltyOn(own, key)
  const worths = scoresIn(found).map(score => worthOf(measure, at, grossOf(score, penalty)))
  return { ball, level, worths, notes: notesOf(measure, ball, at, found, penalty), written }
}

const noNotes: readonly HoleNote[] = []

/** Null for a ball that takes part. */
function reasonMissed(game: SoundGame, ball: BallId, key: HoleKey): HoleNoteCode | null {
  if (isAbsent(game, ball, key)) return 'absent'
  const isOut = game.ballRule.disqualifiedWith === 'ball' && isDisqualified(game, ball)
  return isOut || isOutOfHole(game, ball, key) ? 'disqualified' : null
}

const penaltyOn = ({ penalties }: BallInGame, key: HoleKey): number =>
  penalties.reduce((sum, { hole, strokes }) => sum + (hole === key ? strokes : 0), 0)

const grossOf = (score: HoleScore, penalty: number): number | null =>
  typeof score === 'number' ? score + penalty : null

/** What the one score of a hole does not say of itself. */
function notesOf(
  measure: Measure,
  ball: BallId,
  at: MeasuredHole,
  found: CardScore | undefined,
  penalty: number,
): readonly HoleNote[] {
  if (found?.kind !== 'one') return noNotes
  const { score } = found
  const gross = grossOf(score, penalty)
  const isCapped = measure.isCapped && (gross === null || gross > maximumOf(at))
  if (gross !== null && penalty === 0 && !isCapped) return noNotes
  const codes: HoleNoteCode[] = typeof score === 'number' ? [] : [score]
  if (gross !== null && penalty !== 0) codes.push('penalty')
  if (isCapped) codes.push('capped')
  return codes.map(code => ({ code, ball }))
}

/** The notes of a side on a hole: its balls', and whether fewer were holed than the game counts. */
export function notesOfSide(balls: readonly BallHole[], count: number): readonly HoleNote[] {
  const first = balls[0]
  if (first !== undefined && balls.length === 1) return first.notes
  const notes = balls.flatMap(each => each.notes)
  const isShort =
    count > 1 &&
    balls.every(({ worths }) => worths.length > 0) &&
    balls.filter(({ worths }) => worths.some(({ isHoled }) => isHoled)).length < count
  return isShort ? [...notes, { code: 'short', ball: null }] : notes
}
