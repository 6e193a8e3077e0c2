import { useLayoutEffect } from 'react'
import { useLocation } from 'wouter'

/** A new address begins at the top of its page. */
export function TopOfPage() {
  const [location] = useLocation()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address is what asks for it.
  useLayoutEffect(() => {
    // Newer browsers return a promise from it, which React would take for the cleanup.
    window.scrollTo(0, 0)
  }, [location])
  return null
}
