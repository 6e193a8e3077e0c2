import type { DeviceId, GroupId, LogId } from '#core/values/ids.ts'
import type { Entry } from '#server/store/store.ts'

export const logA = 'log-a' as LogId
export const logB = 'log-b' as LogId
export const alder = 'alder' as DeviceId
export const birch = 'birch' as DeviceId
export const groupA = 'a' as GroupId

/** An entry that a store takes; the text is as good as any. */
export const makeEntry = (n: number, changes: Partial<Entry> = {}): Entry => ({
  log: logA,
  device: alder,
  n,
  scope: null,
  text: `text ${n}`,
  at: 1_000 + n,
  carrier: null,
  creates: false,
  under: null,
  claims: [],
  voidings: [],
  mayRegrant: false,
  ...changes,
})
