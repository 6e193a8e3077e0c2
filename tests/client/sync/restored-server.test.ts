import { join } from 'node:path'
import { expect, onTestFinished, test, vi } from 'vitest'
import { browserClock } from '#client/device/browser-clock.ts'
import { createAnyLink } from '#client/sync/any-link.ts'
import { createEngine, type Engine } from '#client/sync/engine.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { renamingWith } from '#client/sync/rename.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { makeBackup } from '#server/store/backup.ts'
import { restoreBackup } from '#server/store/restore.ts'
import { startApp } from '#tests/server/support/app.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { openDatabase } from '#tests/server/support/store.ts'
import { makeRecord } from './make-held.ts'
import { hash } from './phone.ts'

/** A phone that starts a log by its own key. */
function startPhone(url: string): Engine {
  const key = 'K'.repeat(22)
  const record = makeRecord({ log: 'kept' as LogId, device: 'alder' as DeviceId, key, invite: null })
  const engine = createEngine({
    store: createMemoryStore(),
    link: createAnyLink({ url, clock: browserClock, fetch: (...request) => fetch(...request) }),
    clock: browserClock,
    renaming: async () => renamingWith({ device: () => 'alder-again' as DeviceId, secret: () => key, hash }),
    stored: { record, ops: [] },
    isSaved: false,
    changed: () => {},
  })
  onTestFinished(engine.disconnect)
  return engine
}

const write = (engine: Engine, key: string, value: unknown) =>
  engine.write(() => ({ scope: null, act: 'act', facts: [{ key, value: value as never, replaces: [] }] }))

const whenSettled = (engine: Engine) =>
  vi.waitFor(
    () => {
      const { waiting, link } = engine.foot()
      if (waiting > 0 || link !== 'live') throw new Error(`${waiting} waiting, ${link}`)
    },
    { timeout: 20_000, interval: 20 },
  )

test('a phone fills what a restored backup lacks, and asks for nothing to be done', async () => {
  const dataFolder = makeFolder()
  const first = await startApp({ dataFolder })
  const alder = startPhone(first.url)
  alder.connect()
  await write(alder, makeKey('key', { device: 'alder' as DeviceId }), {
    hash: hash('K'.repeat(22)),
    role: 'desk',
    group: null,
    label: 'Alder',
    invite: null,
  })
  await write(alder, 'title', 'Quillmoor')
  await whenSettled(alder)
  const file = join(makeFolder(), 'kept.db')
  expect(await makeBackup({ folder: dataFolder, target: file, now: 1_000 })).toMatchObject({ ok: true })
  for (let hole = 1; hole <= 9; hole++) await write(alder, `score/rowan/${hole}/1/desk`, 4)
  await whenSettled(alder)
  await first.close()

  const newEra = () => 'restored0001'
  const restored = await restoreBackup({ folder: dataFolder, file, bringsBackDeleted: false, now: 2_000, newEra })
  expect(restored).toMatchObject({ ok: true, value: { mark: { ops: 2 } } })
  await startApp({ dataFolder, port: first.port })
  alder.wake()
  await vi.waitFor(() => expect(alder.holding().record.era).toBe('restored0001'), { timeout: 20_000 })
  await whenSettled(alder)
  const database = await openDatabase(join(dataFolder, 'six-threes.db'))
  expect(database.prepare('SELECT count(*) AS ops FROM ops').get()).toEqual({ ops: 11 })
  expect([...alder.holding().ops.values()].every(({ seq }) => seq !== null)).toBe(true)
})
