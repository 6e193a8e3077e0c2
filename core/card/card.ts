import type { DeviceId, GroupId, OpId } from '#core/values/ids.ts'
import type { HoleKey, HoleScore } from './score.ts'

/** One writing of a score that counts: whose record, which phone, when. */
export interface ScoreEntry {
  readonly score: HoleScore
  readonly record: 'card' | 'marker' | 'desk'
  readonly key: string
  readonly op: OpId
  readonly device: DeviceId
  readonly at: number
}

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
