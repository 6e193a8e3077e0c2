import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { makeBackup } from '#server/store/backup.ts'
import { machineOf } from '#server/watch/machine.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { openStore } from '#tests/server/support/store.ts'

function machineIn(folder: string) {
  const machine = machineOf(folder)
  onTestFinished(machine.stop)
  return machine
}

describe('the machine', () => {
  it('is read: disk, log, age of the folder', async () => {
    const folder = makeFolder()
    const startedAt = Date.now()
    await openStore(folder)
    const machine = machineIn(folder)
    expect(machine.diskFreeBytes()).toBeGreaterThan(0)
    expect(machine.walBytes()).toBeGreaterThan(0)
    expect(Math.abs(machine.firstUsedAt() - startedAt)).toBeLessThan(60_000)
  })

  it('knows the last backup by the note that the backup leaves', async () => {
    const folder = makeFolder()
    await openStore(folder)
    const machine = machineIn(folder)
    expect(machine.lastBackupAt()).toBeNull()
    await makeBackup({ folder, target: null, now: 1_234 })
    expect(machine.lastBackupAt()).toBe(1_234)
    writeFileSync(join(folder, 'last-backup.json'), '{"at":"soon"}')
    expect(machine.lastBackupAt()).toBeNull()
  })

  it('notices that the loop stood still, and only since the last look', async () => {
    const machine = machineIn(makeFolder())
    await new Promise(resolve => setTimeout(resolve, 60))
    machine.loopDelay()
    await new Promise(resolve => setTimeout(resolve, 60))
    const until = performance.now() + 300
    while (performance.now() < until);
    await new Promise(resolve => setTimeout(resolve, 60))
    expect(machine.loopDelay().maxMs).toBeGreaterThan(200)
  })

  it('of an empty folder was first used now', () => {
    const folder = join(makeFolder(), 'data')
    mkdirSync(folder)
    const machine = machineIn(folder)
    expect(machine.walBytes()).toBe(0)
    expect(machine.firstUsedAt()).toBeGreaterThan(0)
  })
})
