import { readFileSync } from 'node:fs'
import { settleText } from './settle/settle-text.ts'

/** Standard output is the JSON alone; a bad file ends with status 2 and one line a fault. */
function settle([file]: readonly string[]): number {
  if (file === undefined) return fail('Name the file: npm run --silent settle -- FILE')
  const text = readText(file)
  if (text === null) return fail(`${file}: cannot be read`)
  const settled = settleText(text)
  if (!settled.ok)
    return fail(settled.error.map(({ path, code }) => `${path === '' ? '(file)' : path}: ${code}`).join('\n'))
  process.stdout.write(`${JSON.stringify(settled.value, null, 2)}\n`)
  return 0
}

function readText(file: string): string | null {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return null
  }
}

function fail(message: string): number {
  process.stderr.write(`${message}\n`)
  return 2
}

// A reader that has seen enough is no fault.
process.stdout.on('error', () => process.exit())
process.exitCode = settle(process.argv.slice(2))
