/** Milliseconds from the finger's lifting; `saved` is null where the tap stored nothing. */
export interface TapTimes {
  readonly painted: number
  readonly saved: number | null
}

export interface TapPage {
  /** Waits for one tap and for what it is to bring about. */
  readonly expect: (selector: string) => void
  readonly times: () => Promise<TapTimes>
}
