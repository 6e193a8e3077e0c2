import type { DeviceId, InviteId, LogId } from '#core/values/ids.ts'
import type { Access, Entry, LogHead, Outcome, Store } from './store.ts'

/** Logs whose head and rights are kept at hand; the one first asked for goes first. */
const mostLogs = 2_000
const mostPhonesOfLog = 2_000

interface Kept {
  head: LogHead
  readonly access: Map<string, Access>
}

type Asked = Pick<Store, 'headOf' | 'accessOf'>

export interface Memory extends Asked {
  /** After a commit: what it has changed. */
  committed(entry: Entry, outcome: Outcome): void
  forget(log: LogId): void
}

/** Every message asks for the head of its log and the rights of its phone; one process writes, so it may remember. */
export function createMemory(reads: Asked): Memory {
  const logs = new Map<LogId, Kept>()

  const keep = (log: LogId, head: LogHead): void => {
    const [first] = logs.keys()
    if (logs.size >= mostLogs && first !== undefined) logs.delete(first)
    logs.set(log, { head, access: new Map() })
  }

  return {
    async headOf(log) {
      const kept = logs.get(log)
      if (kept) return kept.head
      const head = await reads.headOf(log)
      if (head !== null && head !== 'deleted') keep(log, head)
      return head
    },
    async accessOf(log, device: DeviceId, invite: InviteId | null) {
      const kept = logs.get(log)
      const name = `${device}/${invite ?? ''}`
      const known = kept?.access.get(name)
      if (known) return known
      const access = await reads.accessOf(log, device, invite)
      if (kept && kept.access.size < mostPhonesOfLog) kept.access.set(name, access)
      return access
    },
    committed({ log, claims, voidings }, outcome) {
      if (outcome.kind !== 'stored') return
      const kept = logs.get(log)
      if (!kept) return
      if (claims.length > 0 || voidings.length > 0) logs.delete(log)
      else kept.head = { era: kept.head.era, seq: outcome.seq }
    },
    forget: log => void logs.delete(log),
  }
}
