/** When the page was last clicked, and when two fingers or drops were last down at once; milliseconds of one clock. */
export interface Touches {
  readonly clickAt: () => number
  /** True where the last click came from a key or from a reader of the screen, as no pocket's does. */
  readonly isByKey: () => boolean
  readonly twoAt: () => number | null
  readonly close: () => void
}

/** Watches every touch of the page before anything else hears of it. */
export function watchTouches(): Touches {
  let click = performance.now()
  let isByKey = false
  let two: number | null = null
  const ending = new AbortController()
  const options = { capture: true, signal: ending.signal }
  window.addEventListener(
    'click',
    ({ timeStamp, detail }) => {
      click = timeStamp
      isByKey = detail === 0
    },
    options,
  )
  window.addEventListener(
    'pointerdown',
    ({ isPrimary, timeStamp }) => {
      if (!isPrimary) two = timeStamp
    },
    options,
  )
  return { clickAt: () => click, isByKey: () => isByKey, twoAt: () => two, close: () => ending.abort() }
}
