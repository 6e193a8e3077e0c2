import { type CardScore, recordOf, type ScoreEntry } from '#core/card/card.ts'
import { type HoleKey, holeKey } from '#core/card/score.ts'
import { adviseOnStrokeIndexes, type StrokeIndexAdvice } from '#core/handicap/stroke-index-advice.ts'
import { partsOfOpId } from '#core/log/op.ts'
import type { BallId } from '#core/values/ids.ts'
import { courseHoleOf, handicapOfPlayer, orderOfBall } from './game-input-of.ts'
import type { Ball, Outing, Player } from './outing.ts'
import { plainNotesOf } from './plain-notes-of.ts'
import type { Results } from './results.ts'
import type {
  SettledBall,
  SettledCardHole,
  SettledEntry,
  SettledPlayer,
  SettledThree,
  SettleOutput,
} from './settle-output.ts'
import { allowanceAdvice, coverage, settledCertification, settledHandicapping } from './settled-extras.ts'
import { settledCourseHandicap, settledGames } from './settled-games.ts'
import { settledHole } from './settled-side.ts'
import { ballsInTurn, teeShotOf } from './tee-shot.ts'

/** What `settle` prints: an outing and all that is computed from it. */
export function settledOf(outing: Outing, results: Results): SettleOutput {
  const games = settledGames(outing, results)
  const { title, day, length, rules, main } = outing
  const balls = [...outing.balls.values()]
  return {
    sixThrees: 'settled',
    version: 1,
    outing: { title, day, length, rules, main },
    course: courseOf(outing),
    players: [...outing.players.values()].map(player => settledPlayer(outing, player)),
    groups: [...outing.groups.values()].map(({ id, name, balls, round, extra }) => ({
      id,
      name,
      balls,
      order: round,
      extra,
    })),
    games,
    cards: balls.map(ball => settledBall(outing, results, ball)),
    twoScores: [...outing.cards].flatMap(([ball, { scores }]) => twoScoresOf(ball, scores)),
    late: outing.late.map(late => ({ ...place(late), closed: late.closed })),
    stray: outing.stray.map(stray => ({ ...place(stray), group: stray.group })),
    lateFacts: outing.lateFacts.map(({ key, standing: { value, op }, closed }) => ({ key, value, op, closed })),
    doubts: outing.doubts.map(({ key, standings }) => ({
      key,
      values: standings.map(({ value, op }) => ({ value, op })),
    })),
    newer: outing.newer,
    notes: plainNotesOf(outing),
    teeShots: ballsInTurn(outing).flatMap(ball => teeShotsOf(outing, ball)),
    certification: balls.map(ball => settledCertification(outing, ball)),
    handicapping: balls.map(ball => settledHandicapping(outing, ball)),
    allowanceAdvice: allowanceAdvice(outing),
    coverage,
    gaps: games.flatMap(game => ('gaps' in game ? game.gaps.map(gap => ({ ...gap, game: game.id })) : [])),
  }
}

const courseOf = (outing: Outing): SettleOutput['course'] => ({
  name: outing.courseName,
  holes: [...outing.holes].map(([hole, { par, index }]) => ({ hole, par, index })),
  strokeIndexAdvice: adviceOn([...outing.holes.values()].map(({ index }) => index)),
  tees: [...outing.tees].map(([id, { name, indexes }]) => ({
    id,
    name,
    strokeIndexAdvice: indexes === null ? null : adviceOn(indexes),
  })),
})

const adviceOn = (indexes: readonly number[]): StrokeIndexAdvice | null =>
  indexes.length === 18 ? adviseOnStrokeIndexes(indexes) : null

function settledPlayer(outing: Outing, player: Player): SettledPlayer {
  const { id, name, tee, handicap } = player
  const found = handicapOfPlayer(outing, player)
  return {
    id,
    name,
    tee,
    handicap,
    courseHandicap: found.kind === 'course' ? settledCourseHandicap(found.exact) : null,
  }
}

function settledBall(outing: Outing, results: Results, ball: Ball): SettledBall {
  const { round, extra } = orderOfBall(outing, ball)
  const levels = results.cards.get(ball.id)?.levels
  const threes = results.cards.get(ball.id)?.threes ?? []
  const holes = [...round, ...extra].map((played, order): SettledCardHole => {
    const found = cardScore(outing, ball.id, holeKey(played))
    return {
      ...played,
      isScheduled: order < round.length,
      kind: found.kind,
      score: found.kind === 'one' ? found.score : null,
      scores: found.kind === 'two' ? [...new Set(found.entries.map(({ value }) => value))] : [],
      par: courseHoleOf(outing, ball, played)?.par ?? null,
      level: levels?.get(holeKey(played)) ?? null,
    }
  })
  return {
    ball: ball.id,
    name: ball.name,
    players: ball.players,
    group: ball.group,
    isClosed: outing.cards.get(ball.id)?.isClosed ?? false,
    holes,
    threes: threes.map((three): SettledThree => ({ ...three, holes: three.holes.map(settledHole) })),
    overLevel: sumOfKnown(threes.map(({ overLevel }) => overLevel)),
  }
}

function teeShotsOf(outing: Outing, ball: Ball): SettleOutput['teeShots'] {
  const { round, extra } = orderOfBall(outing, ball)
  const holes = [...round, ...extra].flatMap(at => {
    const player = teeShotOf(outing, ball, at)
    return player === null ? [] : [{ ...at, player }]
  })
  return holes.length === 0 ? [] : [{ ball: ball.id, holes }]
}

const cardScore = (outing: Outing, ball: BallId, key: HoleKey): CardScore =>
  outing.cards.get(ball)?.scores.get(key) ?? { kind: 'none' }

function sumOfKnown(numbers: readonly (number | null)[]): number | null {
  const known = numbers.filter(each => each !== null)
  return known.length === 0 ? null : known.reduce((sum, each) => sum + each, 0)
}

const entryOf = (entry: ScoreEntry): SettledEntry => ({
  score: entry.value,
  record: recordOf(entry),
  key: entry.key,
  op: entry.op,
  device: partsOfOpId(entry.op).device,
  at: entry.at,
})

const place = (entry: ScoreEntry & { readonly ball: BallId; readonly hole: number; readonly lap: number }) => ({
  ball: entry.ball as string,
  hole: entry.hole,
  lap: entry.lap,
  ...entryOf(entry),
})

const twoScoresOf = (ball: BallId, scores: ReadonlyMap<HoleKey, CardScore>): SettleOutput['twoScores'] =>
  [...scores].flatMap(([key, score]) =>
    score.kind === 'two' ? [{ ball, ...settledHole(key), entries: score.entries.map(entryOf) }] : [],
  )
