import type { Evidence } from '#core/plan/evidence.ts'

/** Where a ball lies before a stroke. */
export const lies = ['tee', 'fairway', 'rough', 'sand', 'recovery', 'green'] as const
export type Lie = (typeof lies)[number]

/** Distance to the hole in yards, then strokes to hole out from tee, fairway, rough, sand and recovery. */
export type StrokeRow = readonly [
  yd: number,
  tee: number | null,
  fairway: number,
  rough: number,
  sand: number,
  recovery: number,
]

/** Average strokes to hole out by distance and lie, a straight line between rows. */
export interface StrokeTable extends Evidence {
  readonly rows: readonly StrokeRow[]
}

/** Average putts to hole out from 1, 2, 3 … feet, in thousandths. */
export interface PuttTable extends Evidence {
  readonly thousandthsByFoot: readonly number[]
}
