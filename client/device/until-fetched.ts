const restMs = 4_000

/** Code that has to come before something can go on: it is asked for until it is here. */
export async function untilFetched<T>(fetch: () => Promise<T>): Promise<T> {
  for (;;) {
    const found = await fetch().catch(() => null)
    if (found !== null) return found
    await new Promise(resolve => setTimeout(resolve, restMs))
  }
}
