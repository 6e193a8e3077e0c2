/** Whether the browser can keep the screen on at all. */
export const canKeepScreenOn = (): boolean => 'wakeLock' in navigator

/**
 * Keeps the screen on while the page is looked at; the browser takes it back when the page goes out of sight, and it is
 * asked for again when the page returns. `changed` tells whether it is on. Returns what gives it back.
 */
export function keepScreenOn(changed: (isOn: boolean) => void): () => void {
  const ending = new AbortController()
  let held: WakeLockSentinel | null = null
  const ask = async (): Promise<void> => {
    if (document.visibilityState !== 'visible' || held !== null) return
    try {
      const sentinel = await navigator.wakeLock.request('screen')
      if (ending.signal.aborted) return void sentinel.release()
      held = sentinel
      sentinel.addEventListener('release', () => {
        held = null
        if (!ending.signal.aborted) changed(false)
      })
      changed(true)
    } catch {
      // Refused: a battery that runs low, or a setting of the phone.
      if (!ending.signal.aborted) changed(false)
    }
  }
  document.addEventListener('visibilitychange', () => void ask(), { signal: ending.signal })
  void ask()
  return () => {
    ending.abort()
    void held?.release()
  }
}
