import type { HoleKey, HoleScore } from '#core/card/score.ts'
import { scoresOn } from '#core/card/settle-card.ts'
import { maximumOf } from '#core/formats/measures/capped.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundGame } from './game-input.ts'
import type { HoleNote, HoleNoteCode } from './game-result.ts'
import type { BallHole, Measure, MeasuredHole, Worth } from './parts.ts'
import { isAbsent, isDisqualified, isOutOfHole } from './taking-part.ts'

/** A hole for a ball with the game's strokes on it; null where the ball does not play it. */
export function measuredHole(game: SoundGame, ball: BallId, key: HoleKey): MeasuredHole | null {
  const hole = game.balls.get(ball)?.holes.get(key)
  if (hole === undefined) return null
  const strokes = game.strokes.get(ball)?.byHole.get(key) ?? 0
  return { par: hole.par, strokes, maximum: game.methods.maximumScore }
}

/** What gross strokes are worth; `null` is no score. */
export const worthOf = (measure: Measure, at: MeasuredHole, gross: number | null): Worth => ({
  value: measure.valueOf(at, gross),
  isHoled: gross !== null,
})

/** What a ball has on a hole of a total: its scores measured, or what happened to it instead. */
export function ballHoleOf(game: SoundGame, ball: BallId, key: HoleKey): BallHole {
  const found = game.balls.get(ball)
  const at = measuredHole(game, ball, key)
  if (found === undefined || at === null) return { ball, worths: [], level: 0, notes: noNotes }
  const { measure } = game
  const level = at.par - (game.teePar.get(ball)?.get(key) ?? 0)
  const missed = reasonMissed(game, ball, key)
  if (missed !== null) return { ball, level, worths: [worthOf(measure, at, null)], notes: [{ code: missed, ball }] }
  if (game.happenings.holesOut.get(key)?.counts === 'net-par') {
    const gross = at.par + (measure.isNet ? at.strokes : 0)
    return { ball, level, worths: [worthOf(measure, at, gross)], notes: [{ code: 'net-par', ball }] }
  }
  const scores = scoresOn(found.card, key)
  // What a card lacks once the desk has closed it is no score, as it stands on the card.
  if (scores.length === 0 && found.card.isClosed) {
    return { ball, level, worths: [worthOf(measure, at, null)], notes: [{ code: 'blank', ball }] }
  }
  const penalty = penaltyOn(game, ball, key)
  return {
    ball,
    level,
    worths: scores.map(score => worthOf(measure, at, grossOf(score, penalty))),
    notes: notesOf(game, ball, at, scores, penalty),
  }
}

const noNotes: readonly HoleNote[] = []

/** Null for a ball that takes part. */
function reasonMissed(game: SoundGame, ball: BallId, key: HoleKey): HoleNoteCode | null {
  if (isAbsent(game, ball, key)) return 'absent'
  const isOut = game.ballRule.disqualifiedWith === 'ball' && isDisqualified(game, ball)
  return isOut || isOutOfHole(game, ball, key) ? 'disqualified' : null
}

const penaltyOn = ({ happenings }: SoundGame, ball: BallId, key: HoleKey): number =>
  happenings.penalties.reduce((sum, each) => sum + (each.ball === ball && each.hole === key ? each.strokes : 0), 0)

const grossOf = (score: HoleScore, penalty: number): number | null =>
  typeof score === 'number' ? score + penalty : null

/** What the one score of a hole does not say of itself. */
function notesOf(
  { measure }: SoundGame,
  ball: BallId,
  at: MeasuredHole,
  scores: readonly HoleScore[],
  penalty: number,
): readonly HoleNote[] {
  const score = scores[0]
  if (score === undefined || scores.length > 1) return noNotes
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
