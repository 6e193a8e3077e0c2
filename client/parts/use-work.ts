import { useState } from 'react'

/** Runs an act once at a time; while it runs its button rests. A bug in it reaches the error boundary. */
export function useWork(): { readonly isWorking: boolean; readonly work: (act: () => Promise<unknown>) => void } {
  const [isWorking, setWorking] = useState(false)
  const [broken, setBroken] = useState<{ readonly reason: unknown } | null>(null)
  if (broken) throw broken.reason
  const work = (act: () => Promise<unknown>): void => {
    if (isWorking) return
    setWorking(true)
    act().then(
      () => setWorking(false),
      (reason: unknown) => setBroken({ reason }),
    )
  }
  return { isWorking, work }
}
