import { join } from 'node:path'
import { loadDriver } from '#server/store/driver.ts'
import type { Ends } from './ends.ts'
import { createHistory, type History } from './history.ts'
import { type FaultPhone, startPhone } from './phone.ts'
import { makeServer, type RealServer } from './server.ts'
import { readLog } from './server-log.ts'
import { until } from './waiting.ts'

const names = ['alder', 'birch', 'cedar', 'fir', 'hazel', 'rowan', 'willow', 'yew'] as const

/** A server, phones in one outing on it, and the history that watches over both. */
export interface Stage {
  readonly server: RealServer
  readonly history: History
  readonly phones: readonly FaultPhone[]
}

interface StageParts {
  readonly phones: number
  readonly server?: RealServer
  /** Where a phone reaches the server, when not directly. */
  readonly urlFor?: (place: number) => string
}

export async function setStage(ends: Ends, parts: StageParts): Promise<Stage> {
  const server = parts.server ?? (await makeServer(ends))
  const history = createHistory()
  const phones: FaultPhone[] = []
  for (const [place, name] of names.slice(0, parts.phones).entries()) {
    const url = parts.urlFor?.(place) ?? server.url
    phones.push(await startPhone({ ends, history, url, name, isFounder: place === 0 }))
    if (place === 0) await whenSettled(phones)
  }
  await whenSettled(phones)
  return { server, history, phones }
}

export const whenSettled = (phones: readonly FaultPhone[], limitMs = 90_000): Promise<number> =>
  until('every phone says that all is on the server', () => phones.every(phone => phone.isSettled()), limitMs)

/** Everybody scores until the work is done. */
export async function underLoad<T>(phones: readonly FaultPhone[], work: () => Promise<T>): Promise<T> {
  const loads = phones.map(phone => phone.keepScoring())
  try {
    return await work()
  } finally {
    await Promise.all(loads.map(load => load.stop()))
  }
}

/** What the phones say, then what the server has. */
export async function compareNow({ history, server }: Stage): Promise<void> {
  const said = history.whatIsSaid()
  history.compare(await readLog(server.url), said)
}

/** Waits until all is sent and told, then holds every phone, the server and the file against each other. */
export async function compareEnd({ history, server, phones }: Stage, folder = server.folder): Promise<void> {
  // Their owners look at them.
  for (const { engine } of phones) engine.wake()
  await whenSettled(phones)
  const rows = await readLog(server.url)
  const hasAll = ({ engine }: FaultPhone): boolean => engine.holding().ops.size >= rows.length
  await until('every phone holds all', () => phones.every(hasAll), 30_000).catch(error =>
    history.fail('other', String(error)),
  )
  history.compareEnd(rows)
  await server.end('SIGTERM')
  const found = await integrityOf(folder)
  if (found !== 'ok') history.fail('other', `the database: ${found}`)
}

export async function integrityOf(folder: string): Promise<string> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(join(folder, 'six-threes.db'))
  try {
    return (database.prepare('PRAGMA integrity_check').get() as { integrity_check: string }).integrity_check
  } finally {
    database.close()
  }
}
