/** What lies between one phone and the server. */
export interface Air {
  /** Nothing comes through, and nobody is told: from now on in both directions. */
  isSilent: boolean
  /** There is no network, and the phone knows. */
  isAway: boolean
  /** Web sockets are blocked; HTTP comes through. */
  isPolling: boolean
  /** Somebody else answers in the server's name, as the portal of a hotel does. */
  isStrange: boolean
  /** Of HTTP: comes twice, comes in another order, the answer does not come back. */
  isRough: boolean
  /** Milliseconds one way. */
  fastestMs: number
  slowestMs: number
}

export const goodAir = (): Air => ({
  isSilent: false,
  isAway: false,
  isPolling: false,
  isStrange: false,
  isRough: false,
  fastestMs: 20,
  slowestMs: 120,
})
