import type { GroupId } from '#core/values/ids.ts'
import type { Card, CardScore, LateScore, ScoreEntry, StrayScore } from './card.ts'
import { type HoleKey, type HoleScore, holeKey, type PlayedHole } from './score.ts'

/** One current writing of a score, by whichever group or by the desk (null). */
export interface Writing extends ScoreEntry {
  readonly hole: number
  readonly lap: number
  readonly group: GroupId | null
}

/** Whose writing counts for a ball on a hole; null counts the desk's alone. */
export type OwnerOf = (at: PlayedHole) => GroupId | null

export interface SettledCard {
  readonly card: Card
  readonly late: readonly LateScore[]
  readonly stray: readonly StrayScore[]
}

/**
 * A ball's card from everything written about it. What another group than the hole's owner wrote is stray. While a
 * close stands its values are the scores, and what differs from them is late, in whatever order the two came.
 */
export function settleCard(
  writings: readonly Writing[],
  ownerOf: OwnerOf,
  closed: ReadonlyMap<HoleKey, HoleScore> | null,
): SettledCard {
  const counting: Writing[] = []
  const stray: StrayScore[] = []
  for (const writing of writings) {
    if (writing.group === null || writing.group === ownerOf(writing)) counting.push(writing)
    else stray.push({ ...writing, group: writing.group })
  }
  if (closed === null) return { card: { scores: scoresOf(counting), isClosed: false }, late: [], stray }
  return { card: { scores: closedScoresOf(counting, closed), isClosed: true }, late: lateOf(counting, closed), stray }
}

function scoresOf(writings: readonly Writing[]): Map<HoleKey, CardScore> {
  const byHole = new Map<HoleKey, ScoreEntry[]>()
  for (const writing of writings) {
    const entries = byHole.get(holeKey(writing))
    if (entries) entries.push(writing)
    else byHole.set(holeKey(writing), [writing])
  }
  const scores = new Map<HoleKey, CardScore>()
  for (const [key, entries] of byHole) scores.set(key, agreementOf(entries))
  return scores
}

function agreementOf(entries: readonly ScoreEntry[]): CardScore {
  const [first, ...rest] = entries
  if (first === undefined) return { kind: 'none' }
  return rest.every(({ score }) => score === first.score)
    ? { kind: 'one', score: first.score, entries }
    : { kind: 'two', entries }
}

function closedScoresOf(
  writings: readonly Writing[],
  closed: ReadonlyMap<HoleKey, HoleScore>,
): Map<HoleKey, CardScore> {
  const scores = new Map<HoleKey, CardScore>()
  for (const [key, score] of closed) {
    const agreeing = writings.filter(writing => holeKey(writing) === key && writing.score === score)
    scores.set(key, { kind: 'one', score, entries: agreeing.map(entryOf) })
  }
  return scores
}

function lateOf(writings: readonly Writing[], closed: ReadonlyMap<HoleKey, HoleScore>): LateScore[] {
  const late: LateScore[] = []
  for (const writing of writings) {
    const closedScore = closed.get(holeKey(writing)) ?? null
    if (writing.score === closedScore) continue
    late.push({ ...entryOf(writing), hole: writing.hole, lap: writing.lap, closed: closedScore })
  }
  return late
}

const entryOf = ({ score, record, key, op, device, at }: Writing): ScoreEntry => ({
  score,
  record,
  key,
  op,
  device,
  at,
})

/** The different scores that a card holds for a hole: none, one or several. */
export function scoresOn(card: Card, key: HoleKey): readonly HoleScore[] {
  const found = card.scores.get(key)
  if (found === undefined || found.kind === 'none') return []
  return found.kind === 'one' ? [found.score] : [...new Set(found.entries.map(({ score }) => score))]
}
