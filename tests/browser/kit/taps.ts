import type { Locator } from '@playwright/test'

/** Counts what a finger does: one for each tap, and one for each key of the phone's own keyboard. */
export interface Finger {
  readonly taps: () => number
  readonly tap: (target: Locator) => Promise<void>
  /** A tap into the field, then a key for each character. */
  readonly type: (field: Locator, text: string) => Promise<void>
}

export function createFinger(): Finger {
  let taps = 0
  return {
    taps: () => taps,
    tap: async target => {
      taps += 1
      await target.click()
    },
    type: async (field, text) => {
      taps += 1 + text.length
      await field.click()
      await field.pressSequentially(text)
    },
  }
}
