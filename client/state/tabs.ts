import type { LogId } from '#core/values/ids.ts'
import type { Alone } from '../sync/keeper.ts'

export interface TabEvents {
  /** Another page of this phone wrote into the log. */
  readonly wrote: () => void
  /** Whether this page is the one that talks to the server. */
  readonly leads: (isLeading: boolean) => void
}

/** The pages of one phone that show the same log: one of them talks to the server, all read the same disk. */
export interface Tabs {
  readonly tellWrote: () => void
  /** The page is looked at: it takes the lead over from one that perhaps sleeps. */
  readonly lead: () => void
  /** While the disk fails one page alone draws the numbers of acts; where there are no locks, each. */
  readonly alone: Alone
  readonly close: () => void
}

/** Where the browser has no locks every page talks to the server, which tells doubles apart. */
export function openTabs(log: LogId | 'player', { wrote, leads }: TabEvents): Tabs {
  const name = `six-threes/${log}`
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(name)
  if (channel) channel.onmessage = wrote
  const leading = createLead(name, leads)
  const alone = createAlone(`${name}/unsaved`)
  leading.take()
  return {
    alone,
    tellWrote: () => channel?.postMessage('wrote'),
    lead: leading.take,
    close: () => {
      channel?.close()
      leading.give()
      alone.give()
    },
  }
}

/** Held until what this page has in memory is on the disk, or the page is gone. */
function createAlone(name: string): Alone {
  const locks: LockManager | undefined = navigator.locks
  let release: (() => void) | null = null
  const ask = (resolve: (isMine: boolean) => void): void => {
    const hold = (lock: Lock | null): Promise<void> | undefined => {
      resolve(lock !== null)
      if (lock === null) return undefined
      return new Promise(done => {
        release = done
      })
    }
    locks?.request(name, { ifAvailable: true }, hold).catch(() => resolve(false))
  }
  return {
    take: async () => locks === undefined || release !== null || (await new Promise<boolean>(ask)),
    give: () => {
      release?.()
      release = null
    },
  }
}

interface Lead {
  readonly take: () => void
  readonly give: () => void
}

interface Held {
  readonly release: () => void
}

function createLead(name: string, leads: (isLeading: boolean) => void): Lead {
  const locks: LockManager | undefined = navigator.locks
  if (!locks) return { take: () => leads(true), give: () => undefined }
  let held: Held | null = null
  let inLine: AbortController | null = null
  const leaveLine = (): void => {
    inLine?.abort()
    inLine = null
  }
  const ask = (options: LockOptions): void => {
    let mine: Held | null = null
    const hold = (): Promise<void> =>
      new Promise(release => {
        mine = { release }
        held = mine
        if (options.signal === inLine?.signal) inLine = null
        else leaveLine()
        leads(true)
      })
    // Of an older request than the one that holds it nothing has to be said.
    const lost = (): void => {
      if (mine === null || mine !== held) return
      held = null
      leads(false)
      waitInLine()
    }
    locks.request(name, options, hold).catch(lost)
  }
  /** Both pages may be in sight: when the one that took the lead is closed, this one has it without being looked at anew. */
  const waitInLine = (): void => {
    inLine = new AbortController()
    ask({ signal: inLine.signal })
  }
  return {
    take: () => {
      if (held) return
      leaveLine()
      ask({ steal: true })
    },
    give: () => {
      leaveLine()
      held?.release()
      held = null
    },
  }
}
