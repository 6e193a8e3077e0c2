const endings = new Set<() => void>()

// A worker in which a test has failed is ended by its runner: this is where what the test left running is met.
process.once('exit', () => {
  for (const end of endings) end()
})

/** Has this done when the worker ends, however its tests went; it must not wait. */
export const endAtExit = (end: () => void): void => void endings.add(end)
