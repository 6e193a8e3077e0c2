import { execFile } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { notedDay, plainNotedDay } from '#tests/kit/noted-outing.ts'
import { autumnDay, settledWith } from '#tests/kit/plain-outing.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'settle-'))

interface Ran {
  readonly status: number
  readonly stdout: string
  readonly stderr: string
}

function settle(name: string, text: string): Promise<Ran> {
  const file = join(folder, name)
  writeFileSync(file, text)
  return run(file)
}

const run = (...args: readonly string[]): Promise<Ran> =>
  new Promise(done => {
    execFile(
      process.execPath,
      ['--import', 'tsx', 'scripts/settle.ts', ...args],
      { cwd: root },
      (error, stdout, stderr) => {
        done({ status: error === null ? 0 : Number(error.code), stdout, stderr })
      },
    )
  })

describe('settle', () => {
  it('prints every computed result of a plain file as JSON', async () => {
    const { status, stdout, stderr } = await settle('plain.json', JSON.stringify(autumnDay))
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    expect(JSON.parse(stdout)).toEqual(settledWith())
  })

  it('prints the same for the ops, with all that can be said beside scores', async () => {
    const op = makeOp(
      [],
      'fir',
      factsOfPlain(plainNotedDay).map(fact => ({ ...fact, replaces: [] })),
    )
    const whole = { sixThrees: 'outing', version: 1, form: 'whole', log: 'log', ops: [op] }
    const { status, stdout } = await settle('whole.json', JSON.stringify(whole))
    expect(status).toBe(0)
    const plain = await settle('noted.json', JSON.stringify(plainNotedDay))
    expect(plain.stdout).toBe(stdout.replaceAll('"fir.1"', '"file.1"').replaceAll('"fir"', '"file"'))
    expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(settledWith(notedDay))))
  })

  it('ends a bad file with status 2 and one line a fault', async () => {
    const bad = { ...autumnDay, length: 7, main: 5 }
    expect(await settle('bad.json', JSON.stringify(bad))).toEqual({
      status: 2,
      stdout: '',
      stderr: 'length: wrong value\nmain: wrong value\n',
    })
  })

  it('ends with status 2 where there is no file', async () => {
    expect(await run(join(folder, 'none.json'))).toMatchObject({ status: 2, stdout: '' })
    expect(await run()).toMatchObject({ status: 2, stdout: '' })
  })
})
