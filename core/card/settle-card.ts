import type { GroupId } from '#core/values/ids.ts'
import type { Card, CardScore, LateScore, ScoreEntry, StrayScore } from './card.ts'
import { type HoleKey, type HoleScore, holeKey, type PlayedHole } from './score.ts'

/** The current writings under one key of a ball's scores: by a group's record or the desk's (null). */
export interface ScoreRow {
  readonly at: PlayedHole & { readonly group: GroupId | null }
  /** At least one. */
  readonly entries: readonly ScoreEntry[]
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
  rows: readonly ScoreRow[],
  ownerOf: OwnerOf,
  closed: ReadonlyMap<HoleKey, HoleScore> | null,
): SettledCard {
  const counting: ScoreRow[] = []
  const stray: StrayScore[] = []
  for (const row of rows) {
    const { group } = row.at
    if (group === null || group === ownerOf(row.at)) counting.push(row)
    else for (const entry of row.entries) stray.push({ ...entryOf(entry), ...holeOf(row), group })
  }
  if (closed === null) return { card: { scores: scoresOf(counting), isClosed: false }, late: noLate, stray }
  return { card: { scores: closedScoresOf(counting, closed), isClosed: true }, late: lateOf(counting, closed), stray }
}

const noLate: readonly LateScore[] = []

function scoresOf(rows: readonly ScoreRow[]): Map<HoleKey, CardScore> {
  const scores = new Map<HoleKey, CardScore>()
  for (const { at, entries } of rows) {
    const key = holeKey(at)
    const found = scores.get(key)
    const all = found === undefined || found.kind === 'none' ? entries : [...found.entries, ...entries]
    scores.set(key, agreementOf(all))
  }
  return scores
}

function agreementOf(entries: readonly ScoreEntry[]): CardScore {
  const first = entries[0]
  if (first === undefined) return { kind: 'none' }
  for (const { value } of entries) if (value !== first.value) return { kind: 'two', entries }
  return { kind: 'one', score: first.value, entries }
}

function closedScoresOf(rows: readonly ScoreRow[], closed: ReadonlyMap<HoleKey, HoleScore>): Map<HoleKey, CardScore> {
  const scores = new Map<HoleKey, CardScore>()
  for (const [key, score] of closed) {
    const ofHole = rows.filter(({ at }) => holeKey(at) === key).flatMap(({ entries }) => entries)
    scores.set(key, { kind: 'one', score, entries: ofHole.filter(({ value }) => value === score) })
  }
  return scores
}

function lateOf(rows: readonly ScoreRow[], closed: ReadonlyMap<HoleKey, HoleScore>): LateScore[] {
  return rows.flatMap(row => {
    const closedScore = closed.get(holeKey(row.at)) ?? null
    const differing = row.entries.filter(({ value }) => value !== closedScore)
    return differing.map(entry => ({ ...entryOf(entry), ...holeOf(row), closed: closedScore }))
  })
}

const entryOf = ({ key, value, op, at }: ScoreEntry): ScoreEntry => ({ key, value, op, at })

const holeOf = ({ at: { hole, lap } }: ScoreRow): PlayedHole => ({ hole, lap })

/** The different scores that a card holds for a hole: none, one or several. */
export const scoresOn = (card: Card, key: HoleKey): readonly HoleScore[] => scoresIn(card.scores.get(key))

/** The different ones of what a card holds for one hole. */
export function scoresIn(found: CardScore | undefined): readonly HoleScore[] {
  if (found === undefined || found.kind === 'none') return []
  return found.kind === 'one' ? [found.score] : [...new Set(found.entries.map(({ value }) => value))]
}
