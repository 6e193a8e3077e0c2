import type { ScoreRecord } from '#core/card/card.ts'
import type { HoleScore, PlayedHole } from '#core/card/score.ts'
import { factsOf, keysOf, type LogState, seenUnder, standingsOf } from '#core/log/fold.ts'
import { type Fact, groupOfKey, withdrawn } from '#core/log/op.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import type { ClosedScore } from './facts.ts'
import { makeKey, parseKey, scoreKey } from './keys.ts'
import type { Outing } from './outing.ts'
import { inCardOrder, settledScores } from './settled-scores.ts'
import type { NewFact } from './stated-fact.ts'

export { defaultGameMethods, gameFacts, type NewGame } from './game-settings.ts'
export type { NewFact } from './stated-fact.ts'

/** The facts with everything seen under each key replaced. */
export const factsReplacing = (state: LogState, facts: readonly NewFact[]): Fact[] =>
  facts.map(({ key, value }) => ({ key, value, replaces: seenUnder(state, key) }))

export interface ScoreAct extends PlayedHole {
  readonly group: GroupId
  readonly ball: BallId
  readonly record: ScoreRecord
  /** Null takes the score away. */
  readonly score: HoleScore | null
}

/** A score in one record. */
export const scoreFact = ({ score, ...at }: ScoreAct): NewFact => ({ key: scoreKey(at), value: score ?? withdrawn })

export interface Choice extends PlayedHole {
  readonly ball: BallId
  readonly score: HoleScore
}

/**
 * Ends two scores: the chosen one in every record that counts and differs. With no record at all it goes on the card
 * of the ball's group; empty when all agree on it already.
 */
export function chooseScoreFacts(state: LogState, outing: Outing, choice: Choice): NewFact[] {
  const keys = recordKeys(state, outing, choice)
  const differing = keys.filter(key => standingsOf(state, key).some(({ value }) => value !== choice.score))
  if (differing.length > 0) return differing.map(key => ({ key, value: choice.score }))
  const group = outing.balls.get(choice.ball)?.group ?? null
  if (group === null || keys.some(key => standingsOf(state, key).length > 0)) return []
  return [scoreFact({ ...choice, group, record: 'card' })]
}

/** The keys of the records that count for a ball on a hole; what another group wrote is not among them. */
function recordKeys(state: LogState, outing: Outing, { ball, hole, lap }: Choice): string[] {
  const stray = new Set(outing.stray.filter(entry => entry.ball === ball).map(({ key }) => key))
  return keysOf(state).filter(key => {
    const parts = parseKey(key)
    return parts?.kind === 'score' && parts.ball === ball && parts.hole === hole && parts.lap === lap && !stray.has(key)
  })
}

/** Closes balls with their settled scores. A ball with two scores cannot be closed and is left out. */
export function closeBallFacts(outing: Outing, balls: readonly BallId[]): NewFact[] {
  return balls.flatMap(ball => {
    const scores = settledScores(outing, ball)
    return scores === null ? [] : [closeFact(ball, scores)]
  })
}

/** Opens balls again: their records count as they stand. */
export const reopenBallFacts = (balls: readonly BallId[]): NewFact[] =>
  balls.map(ball => ({ key: makeKey('closeBall', { ball }), value: withdrawn }))

/**
 * Accepts a score for a closed ball: the ball is closed again with it, and it goes into every record that differs. A
 * desk's own correction is the same act.
 */
export function acceptLateFacts(state: LogState, outing: Outing, accepted: Choice): NewFact[] {
  const others = (settledScores(outing, accepted.ball) ?? []).filter(
    ([hole, lap]) => hole !== accepted.hole || lap !== accepted.lap,
  )
  const close = closeFact(accepted.ball, [...others, [accepted.hole, accepted.lap, accepted.score]])
  return [close, ...chooseScoreFacts(state, outing, accepted)]
}

const closeFact = (ball: BallId, scores: readonly ClosedScore[]): NewFact => ({
  key: makeKey('closeBall', { ball }),
  value: { scores: [...scores].sort(inCardOrder) },
})

/** Closes what a group's facts say beside its scores: its order of play, its own games. */
export function closeGroupFacts(state: LogState, group: GroupId): NewFact[] {
  const facts: Json[] = []
  for (const [key, standings] of factsOf(state)) {
    const value = standings.at(-1)?.value ?? null
    if (groupOfKey(key) === group && parseKey(key)?.kind !== 'score') facts.push([key, value])
  }
  return [{ key: makeKey('closeGroup', { group }), value: { facts } }]
}
