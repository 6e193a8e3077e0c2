import { expect } from 'vitest'
import type { LogStore } from '#client/sync/log-store.ts'
import { snapshotOf } from '#core/log/snapshot.ts'
import { createFakeClock, type FakeClock } from './fake-clock.ts'
import { createFakeServer, type FakeServer } from './fake-server.ts'
import { found, type Phone, startPhone } from './phone.ts'

/** The server and the clock of the test that runs. */
export let clock: FakeClock
export let server: FakeServer

/** Before each test: a clock and a server of its own. */
export function startNetwork(): void {
  clock = createFakeClock()
  server = createFakeServer()
}

export const start = (device: string, more: { store?: LogStore; isTold?: boolean } = {}): Promise<Phone> =>
  startPhone({ server, clock, device, ...more })

/** A phone with a founded log that the server holds. */
export const startLive = async (device = 'alder'): Promise<Phone> => {
  const phone = await start(device)
  phone.link.plug()
  await found(phone)
  await phone.flush()
  return phone
}

export const joinLive = async (device: string): Promise<Phone> => {
  const phone = await start(device)
  phone.link.plug()
  await phone.flush()
  return phone
}

export const same = (a: Phone, b: Phone): void =>
  expect(snapshotOf(a.engine.holding().state)).toEqual(snapshotOf(b.engine.holding().state))

export const textsOf = (): string[] => server.ops.map(([, text]) => text)
export const valuesStored = (key: string): unknown[] =>
  textsOf().flatMap(text =>
    JSON.parse(text)
      .facts.filter((fact: { key: string }) => fact.key === key)
      .map((f: { value: unknown }) => f.value),
  )
