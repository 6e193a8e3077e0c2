import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import { expect, test } from 'vitest'
import { catalogue } from '#client/words/say-any.ts'

const run = promisify(execFile)

test('the list of words has every text of the catalogue once, with file, tag and source', async () => {
  const { stdout } = await run(process.execPath, ['scripts/run.mjs', 'words'])
  const lines = stdout
    .trim()
    .split('\n')
    .map(line => line.split('\t'))
  expect(lines.map(([, key]) => key).sort()).toEqual(Object.keys(catalogue).sort())
  expect(
    lines.every(([file = '', , tag = '', text = '']) => file.endsWith('-words.ts') && tag !== '' && text !== ''),
  ).toBe(true)
  expect(lines.find(([, key]) => key === 'concede-title')).toEqual([
    'note-words.ts',
    'concede-title',
    'standard',
    'Concession',
    'Rules of Golf 2023, R&A and USGA, rule 3.2b',
  ])
}, 30_000)
