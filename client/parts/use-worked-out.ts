import { useEffect, useState } from 'react'

/** Time for the page to be drawn, and for a number to be typed to its end, in milliseconds. */
const restMs = 150

/**
 * What a sum comes to that takes longer than a frame; undefined until it is there for the first time. It is worked out
 * when the page stands, and again when `work`, which has to be memoised, is another.
 */
export function useWorkedOut<Answer>(work: () => Answer): Answer | undefined {
  const [answer, setAnswer] = useState<{ readonly is: Answer } | null>(null)
  useEffect(() => {
    const timer = setTimeout(() => setAnswer({ is: work() }), restMs)
    return () => clearTimeout(timer)
  }, [work])
  return answer?.is
}
