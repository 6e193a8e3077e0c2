import { type RefObject, useEffect, useRef } from 'react'
import { useLocation } from 'wouter'

/** A new address is read from its heading on, and the next Tab leads to what stands below it. */
export function usePageFocus(): RefObject<HTMLElement | null> {
  const page = useRef<HTMLElement>(null)
  const [location] = useLocation()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address is what asks for it.
  useEffect(() => {
    const heading = page.current?.querySelector('h1') ?? page.current
    if (!heading) return
    heading.tabIndex = -1
    heading.focus({ preventScroll: true })
  }, [location])
  return page
}
