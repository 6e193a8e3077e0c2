import { copyFileSync, existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Verdict } from '#shared/messages/verdict.ts'
import { connect, type Line, until } from '#tests/server/support/app.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { makePhone, type Phone, score } from '#tests/server/support/phone.ts'
import { startServer, urlOf } from '#tests/server/support/process.ts'
import { openDatabase } from '#tests/server/support/store.ts'
import { runCommand } from './run-command.ts'

interface Load {
  readonly acknowledged: string[]
  /** Done when what is on its way has been answered. */
  stop(): Promise<void>
}

/** Ten scores at a time, one after another, until it is stopped. */
function keepScoring(line: Line, phone: Phone): Load {
  const acknowledged: string[] = []
  let goesOn = true
  const scoring = (async () => {
    while (goesOn) {
      const ops = Array.from({ length: 10 }, (_, hole) => phone.op([score('a', 4, hole + 1, phone.device)]))
      const { verdicts } = (await line.ask('push', { ops })) as { verdicts: readonly Verdict[] }
      acknowledged.push(...ops.filter((_, index) => verdicts[index]?.kind === 'stored'))
    }
  })()
  return {
    acknowledged,
    stop() {
      goesOn = false
      return scoring
    },
  }
}

const textsIn = async (path: string): Promise<Set<string>> => {
  const rows = (await openDatabase(path)).prepare('SELECT text FROM ops').all() as { text: string }[]
  return new Set(rows.map(({ text }) => text))
}

describe('backup and restore as commands', () => {
  it('under load: a backup has every row stored before it began, a copied file has not, and is refused', async () => {
    const DATA_DIR = makeFolder()
    const server = startServer({ PORT: '0', DATA_DIR })
    const phone = makePhone('alder')
    const line = await connect(await urlOf(server), phone)
    await line.ask('push', { ops: [phone.op([phone.keyFact('desk')])] })
    const load = keepScoring(line, phone)
    await until('some is stored', () => load.acknowledged.length > 300)
    const before = [...load.acknowledged]
    const copy = join(makeFolder(), 'copy.db')
    copyFileSync(join(DATA_DIR, 'six-threes.db'), copy)
    const file = join(makeFolder(), 'kept.db')
    const backup = await runCommand('backup', { DATA_DIR }, file)
    expect(backup).toMatchObject({
      status: 0,
      stdout: `${file}\n`,
      stderr: expect.stringMatching(/^A whole backup of /),
    })
    const during = load.acknowledged.length
    await load.stop()
    expect(during).toBeGreaterThan(before.length)
    const kept = await textsIn(file)
    expect(before.filter(text => !kept.has(text))).toEqual([])

    const copied = await textsIn(copy).catch(() => new Set<string>())
    expect(before.filter(text => !copied.has(text)).length).toBeGreaterThan(0)
    const held = await runCommand('restore', { DATA_DIR }, file)
    expect(held).toMatchObject({ status: 1, stderr: expect.stringMatching(/Another server .* Stop it, then restore/) })
    server.child.kill('SIGTERM')
    await server.ended
    const refused = await runCommand('restore', { DATA_DIR }, copy)
    expect(refused).toMatchObject({ status: 1, stderr: expect.stringMatching(/is no backup but a copy/), stdout: '' })
    const restored = await runCommand('restore', { DATA_DIR }, file)
    expect(restored).toMatchObject({ status: 0, stdout: expect.stringContaining('before-restore-'), stderr: '' })
    expect(await textsIn(join(DATA_DIR, 'six-threes.db'))).toEqual(kept)
    await expect(urlOf(startServer({ PORT: '0', DATA_DIR }))).resolves.toMatch(/^http/)
  })

  it('of a server that was killed has what was only in the log', async () => {
    const DATA_DIR = makeFolder()
    const server = startServer({ PORT: '0', DATA_DIR })
    const phone = makePhone('alder')
    const line = await connect(await urlOf(server), phone)
    const text = phone.op([phone.keyFact('desk')])
    await line.ask('push', { ops: [text] })
    server.child.kill('SIGKILL')
    await server.ended
    const file = join(makeFolder(), 'kept.db')
    expect(await runCommand('backup', { DATA_DIR }, file)).toMatchObject({ status: 0 })
    expect(await textsIn(file)).toEqual(new Set([text]))
  })

  it.each([
    ['restore', [], 2, /^restore: name the backup: /],
    ['restore', ['a.db', 'b.db'], 2, /^restore: name the backup: /],
    ['restore', ['--force', 'a.db'], 2, /^restore: name the backup: /],
    ['restore', ['gone.db'], 1, /^restore: .*gone\.db is not there; /],
    ['backup', ['a.db', 'b.db'], 2, /^backup: name one file or folder/],
    ['backup', [], 1, /^backup: The data folder .* holds no database; set DATA_DIR /],
  ] as const)('%s %j ends with %i and one line', async (command, args, status, line) => {
    const DATA_DIR = makeFolder()
    const ran = await runCommand(command, { DATA_DIR }, ...args)
    expect(ran).toMatchObject({ status, stdout: '', stderr: expect.stringMatching(line) })
    expect(ran.stderr.trim().split('\n')).toHaveLength(1)
    expect(existsSync(join(DATA_DIR, 'six-threes.db'))).toBe(false)
  })

  it('says which setting is wrong', async () => {
    const ran = await runCommand('backup', { DATA_DIR: makeFolder(), PORT: 'eighty' })
    expect(ran).toMatchObject({ status: 1, stderr: expect.stringMatching(/^backup: PORT must be /) })
  })
})
