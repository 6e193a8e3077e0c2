import { useEffect, useState } from 'react'

/**
 * What a question comes to; null until the answer is there. It is asked again when `ask`, which has to be memoised, is
 * another, and what comes after that of the one before is left.
 */
export function useAnswer<Answer>(ask: () => Promise<Answer>): Answer | null {
  const [answer, setAnswer] = useState<Answer | null>(null)
  useEffect(() => {
    let isWanted = true
    ask().then(
      made => isWanted && setAnswer(() => made),
      (reason: unknown) => reportError(reason),
    )
    return () => {
      isWanted = false
    }
  }, [ask])
  return answer
}
