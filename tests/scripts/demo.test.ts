import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import { describe, expect, it } from 'vitest'
import { startApp } from '#tests/server/support/app.ts'

const run = promisify(execFile)
const demo = (...args: string[]) => run(process.execPath, ['scripts/run.mjs', 'demo', ...args])

describe('the demo', () => {
  it('plays four phones through a round against a running server, and says the board after every three', async () => {
    const { url, port } = await startApp()
    const { stdout } = await demo('--server', url, '--pace', '0')
    const lines = stdout.trim().split('\n')
    expect(lines[0]).toMatch(new RegExp(`^Four phones play Quillmoor\\..* http://127\\.0\\.0\\.1:${port}/#/join/`))
    expect(lines.filter(line => line.startsWith('Hole '))).toHaveLength(18)
    expect(lines).toContain('Hole 8: Alder 6, Birch 5, Cedar picked up, Rowan 6')
    expect(lines.at(-1)).toBe('  Stableford: Birch 37, Rowan 35, Alder 33, Cedar 27')
    expect(lines.at(-2)).toBe('  Birch & Rowan 4 & 2 against Alder & Cedar')
  }, 60_000)

  it('says in one line where no server answers, and what a pace is', async () => {
    await expect(demo('--server', 'http://127.0.0.1:9')).rejects.toMatchObject({
      code: 1,
      stderr: expect.stringMatching(/^demo: no Six Threes server answers at http:\/\/127\.0\.0\.1:9;.*\n$/),
    })
    await expect(demo('--pace', 'brisk')).rejects.toMatchObject({
      code: 2,
      stderr: 'demo: --pace is seconds between two scores, 0 to 600\n',
    })
  })
})
