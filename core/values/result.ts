/** An expected outcome: a value, or a failure that the caller must look at. Bugs throw instead. */
export type Result<T, E> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E }

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value })

export const err = <E>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error })

/** A fault in something a person or another program wrote: where it stands, and a closed code. */
export interface Fault<Code extends string = string> {
  /** JSON path of the field, e.g. `players[2].index`; empty for the whole. */
  readonly path: string
  readonly code: Code
}
