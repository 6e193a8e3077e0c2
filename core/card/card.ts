import type { GroupId, OpId } from '#core/values/ids.ts'
import type { HoleKey, HoleScore } from './score.ts'

export const records = ['card', 'marker', 'desk'] as const
export type ScoreRecord = (typeof records)[number]

/** One writing of a score that counts: the value that stands under its key, which act of which phone wrote it, when. */
export interface ScoreEntry {
  readonly key: string
  readonly value: HoleScore
  readonly op: OpId
  readonly at: number
}

/** Whose record an entry is in: its key says so last. */
export const recordOf = ({ key }: ScoreEntry): ScoreRecord => key.slice(key.lastIndexOf('/') + 1) as ScoreRecord

/** What a ball's records say of a hole. Two different results are unsettled in every total until one is chosen. */
export type CardScore =
  | { readonly kind: 'none' }
  | { readonly kind: 'one'; readonly score: HoleScore; readonly entries: readonly ScoreEntry[] }
  | { readonly kind: 'two'; readonly entries: readonly ScoreEntry[] }

/** A ball's scores by hole and lap; a hole that nobody has written is not in it. */
export interface Card {
  readonly scores: ReadonlyMap<HoleKey, CardScore>
  /** True while the desk's close of this ball stands: then `scores` are the closed ones. */
  readonly isClosed: boolean
}

/** Of a ball that nobody has written a score for: one, so that what is made of it is made once. */
export const emptyCard: Card = { scores: new Map(), isClosed: false }

/** A score that differs from the closed one: listed, and without effect until the desk closes the ball again with it. */
export interface LateScore extends ScoreEntry {
  readonly hole: number
  readonly lap: number
  readonly closed: HoleScore | null
}

/** What a group wrote about a ball that was not its own on that hole: listed, never counted. */
export interface StrayScore extends ScoreEntry {
  readonly hole: number
  readonly lap: number
  readonly group: GroupId
}
