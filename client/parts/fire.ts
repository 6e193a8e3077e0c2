/** Starts an act whose outcome the foot tells; a bug in it is reported and the page stays. */
export function fire(act: Promise<unknown>): void {
  act.catch((reason: unknown) => reportError(reason))
}
