import { useEffect, useEffectEvent } from 'react'

/** Does this each time the phone comes out of the pocket while the page is this one. */
export function useWaking(woken: () => void): void {
  const seen = useEffectEvent(() => {
    if (document.visibilityState === 'visible') woken()
  })
  useEffect(() => {
    const ending = new AbortController()
    document.addEventListener('visibilitychange', () => seen(), { signal: ending.signal })
    return () => ending.abort()
  }, [])
}
