import { type HoleKey, holeKey } from '#core/card/score.ts'
import type { Absence } from '#core/formats/happenings.ts'
import type { BallId, RulingId } from '#core/values/ids.ts'
import type { HoleAndLap, KeyParts } from './facts.ts'
import { gameNotesOf } from './game-notes-of.ts'
import type { Certified, Notes } from './notes.ts'
import type { Ball, Game } from './outing.ts'
import type { FactRow, Reading, RowKind } from './reading.ts'
import { isSpeaker } from './speaker.ts'

/** Reads what stands beside the scores. What a group wrote about a ball that is not its own there is left out. */
export function notesOf(reading: Reading, balls: ReadonlyMap<BallId, Ball>, games: readonly Game[]): Notes {
  const own = <K extends RowKind>(kind: K) =>
    reading.rows(kind).filter(({ parts }) => isSpeaker(balls, parts.ball, parts))
  return {
    ofGames: gameNotesOf(reading, balls, games),
    holesOut: new Map(reading.rows('holeOut').map(({ parts, value }) => [keyOfParts(parts), value])),
    drives: byBallAndHole(own('drive')),
    teeShots: byBallAndHole(own('teeShot')),
    absences: new Map(own('absence').map(({ parts, value }) => [parts.ball as BallId, absenceOf(parts, value)])),
    likelyScores: byBallAndHole(own('likelyScore')),
    markers: new Map(own('marker').map(({ parts, value }) => [parts.ball as BallId, value])),
    certified: certifiedOf(own('certifiedByPlayer'), own('certifiedByMarker')),
    rulings: reading.rows('ruling').map(({ parts, value }) => ({ id: parts.ruling as RulingId, ruling: value })),
    playingConditions: reading.rows('playingConditions')[0]?.value ?? null,
  }
}

const keyOfParts = ({ hole, lap }: KeyParts): HoleKey => holeKey({ hole: hole ?? 0, lap: lap ?? 0 })

const keyOf = (at: HoleAndLap | null): HoleKey | null => at && holeKey({ hole: at[0], lap: at[1] })

function byBallAndHole<K extends 'drive' | 'teeShot' | 'likelyScore'>(
  rows: readonly FactRow<K>[],
): Map<BallId, Map<HoleKey, FactRow<K>['value']>> {
  const found = new Map<BallId, Map<HoleKey, FactRow<K>['value']>>()
  for (const { parts, value } of rows) {
    const ball = parts.ball as BallId
    found.set(ball, (found.get(ball) ?? new Map()).set(keyOfParts(parts), value))
  }
  return found
}

const absenceOf = (parts: KeyParts, value: FactRow<'absence'>['value']): Absence => ({
  ...value,
  ball: parts.ball as BallId,
  joinedAt: keyOf(value.joinedAt),
  leftAt: keyOf(value.leftAt),
})

function certifiedOf(
  byPlayer: readonly FactRow<'certifiedByPlayer'>[],
  byMarker: readonly FactRow<'certifiedByMarker'>[],
): Map<BallId, Certified> {
  const found = new Map<BallId, Certified>()
  const add = (ball: BallId | null, part: Partial<Certified>): void => {
    if (ball !== null) found.set(ball, { byPlayer: null, byMarker: null, ...found.get(ball), ...part })
  }
  for (const { parts, value } of byPlayer) add(parts.ball, { byPlayer: value.scores })
  for (const { parts, value } of byMarker) add(parts.ball, { byMarker: value.scores })
  return found
}
