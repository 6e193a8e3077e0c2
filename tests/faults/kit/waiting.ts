export const pause = (ms: number): Promise<void> => new Promise(resolve => setTimeout(resolve, ms))

/** Milliseconds until the condition held; an error with its name when it never did. */
export async function until(name: string, holds: () => boolean, limitMs = 60_000): Promise<number> {
  const startedAt = performance.now()
  while (!holds()) {
    if (performance.now() - startedAt > limitMs) throw new Error(`not within ${limitMs} ms: ${name}`)
    await pause(10)
  }
  return performance.now() - startedAt
}
