import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

/** A folder of its own, gone when the test is over. */
export function makeFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'six-threes-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}
