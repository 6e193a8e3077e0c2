import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { LogId } from '#core/values/ids.ts'
import { makeEntry } from '#tests/server/support/entry.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { fact, makePhone } from '#tests/server/support/phone.ts'
import { openStore } from '#tests/server/support/store.ts'
import { runCommand } from './run-command.ts'

async function setUp() {
  const folder = makeFolder()
  const store = await openStore(folder)
  for (const [place, log] of ['autumn', 'spring'].entries()) {
    const phone = makePhone('alder', null, log)
    const facts = [phone.keyFact('desk'), fact('title', `${log} Day`), fact('day', '2026-10-10')]
    const at = Date.UTC(2026, 9, 10 + place, 9, 30)
    await store.append(makeEntry(1, { log: log as LogId, creates: true, at, text: phone.op(facts) }))
  }
  return { folder, store, env: { DATA_DIR: folder } }
}

describe('outings', () => {
  it('lists what is in the data folder while a server holds it', async () => {
    const { env } = await setUp()
    expect(await runCommand('outings', env)).toEqual({
      status: 0,
      stdout:
        'spring\t2026-10-10\t1\t2026-10-11T09:30\tspring Day\n' +
        'autumn\t2026-10-10\t1\t2026-10-10T09:30\tautumn Day\n',
      stderr: '',
    })
  })

  it('deletes one for good, and only while no server holds the folder', async () => {
    const { env, store, folder } = await setUp()
    const held = await runCommand('outings', env, '--delete', 'autumn')
    expect(held).toMatchObject({
      status: 1,
      stderr: expect.stringMatching(/^outings: Another server .* Nothing was deleted; /),
    })
    await store.close()
    expect(await runCommand('outings', env, '--delete', 'autumn')).toMatchObject({ status: 0, stderr: '' })
    expect(readFileSync(join(folder, 'six-threes.db'), 'latin1')).not.toContain('autumn Day')
    const again = await openStore(folder)
    expect(await again.headOf('autumn' as LogId)).toBe('deleted')
    expect(await again.headOf('spring' as LogId)).toMatchObject({ seq: 1 })
  })

  it.each([
    [['--delete', 'nowhere'], 1, /^outings: no outing here has the id nowhere; npm run outings lists them\.$/m],
    [['autumn'], 2, /^outings: list them with npm run outings/],
  ] as const)('%j ends with %i and one line', async (args, status, line) => {
    const { env } = await setUp()
    expect(await runCommand('outings', env, ...args)).toMatchObject({
      status,
      stdout: '',
      stderr: expect.stringMatching(line),
    })
  })

  it('of a folder without a database names the setting', async () => {
    const ran = await runCommand('outings', { DATA_DIR: makeFolder() })
    expect(ran).toMatchObject({ status: 1, stderr: expect.stringMatching(/holds no database; set DATA_DIR/) })
  })
})
