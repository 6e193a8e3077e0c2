interface WakeHandlers {
  /** The page is looked at again, or the network says that it is back. */
  readonly wake: () => void
  /** The page goes away, perhaps frozen: an open socket would keep a dead page in the cache of the back button. */
  readonly sleep: () => void
}

/** Watches the page's comings and goings; returns what ends the watch. */
export function watchWaking({ wake, sleep }: WakeHandlers): () => void {
  const ending = new AbortController()
  const { signal } = ending
  const seen = (): void => {
    if (document.visibilityState === 'visible') wake()
  }
  document.addEventListener('visibilitychange', seen, { signal })
  document.addEventListener('resume', seen, { signal })
  window.addEventListener('pageshow', wake, { signal })
  window.addEventListener('online', wake, { signal })
  window.addEventListener('pagehide', sleep, { signal })
  return () => ending.abort()
}
