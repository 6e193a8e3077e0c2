/** Stops on a broken promise of our own code; never used for input. */
export function assert(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Error(message)
}

/** The value, which our own code has made sure is there. */
export function must<T>(value: T | null | undefined, message: string): T {
  if (value === null || value === undefined) throw new Error(message)
  return value
}

/** The end of every exhaustive `switch`. */
export function unreachable(value: never): never {
  throw new Error(`unreachable: ${JSON.stringify(value)}`)
}
