import type { Ends } from './kit/ends.ts'
import { withEnds } from './kit/ends.ts'
import type { History } from './kit/history.ts'

/** What a run of one fault came to; any words at all, and it has failed. */
export interface Outcome {
  readonly fault: string
  readonly rounds: number
  readonly acknowledged: number
  readonly lost: number
  readonly duplicated: number
  readonly falseMarks: number
  /** Measured or said on the way. */
  readonly notes: Readonly<Record<string, string | number>>
  readonly words: readonly string[]
}

export type Notes = Record<string, string | number>

/** Runs a fault with what it started ended, however it went. */
export const runFault = (
  fault: string,
  rounds: number,
  work: (ends: Ends, notes: Notes) => Promise<History>,
): Promise<Outcome> =>
  withEnds(async ends => {
    const notes: Notes = {}
    const { counts, acknowledged } = await work(ends, notes)
    const { lost, duplicated, falseMarks, words } = counts
    return { fault, rounds, acknowledged: acknowledged(), lost, duplicated, falseMarks, notes, words }
  })
