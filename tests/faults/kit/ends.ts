/** What was started and has to be ended, last first, however the work ends. */
export interface Ends {
  readonly add: (end: () => unknown) => void
}

export async function withEnds<T>(work: (ends: Ends) => Promise<T>): Promise<T> {
  const all: (() => unknown)[] = []
  try {
    return await work({ add: end => void all.push(end) })
  } finally {
    for (const end of all.reverse()) await end()
  }
}
