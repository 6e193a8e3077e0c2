import { parseArgs } from 'node:util'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import type { Op } from '#core/log/op.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { LogId } from '#core/values/ids.ts'
import { FolderHeld, StartFault } from '#server/start-fault.ts'
import { newEra } from '#server/store/era.ts'
import { readKeptLogs } from '#server/store/kept-logs.ts'
import { openSqliteStore } from '#server/store/sqlite.ts'
import { isKnownValue } from '#shared/facts.ts'
import { dataFolderNamed, fail } from './keep/data-folder.ts'

/** Lists the outings of the data folder, or deletes one while the server is stopped: npm run outings -- [--delete ID]. */
const doomed = asked()
const folder = dataFolderNamed('outings')
if (doomed === null) await list()
else await deleteOuting(doomed as LogId)

/** A line each, tabs between: id, day, acts, when it was last written, name. */
async function list(): Promise<void> {
  const lines = await readKeptLogs(folder, ({ log, ops, lastAt }, textsOf) => {
    const state = foldOps(
      emptyLog,
      textsOf().map(text => JSON.parse(text) as Op),
    )
    const { title, courseName, day } = outingOf(state, isKnownValue)
    const last = new Date(lastAt).toISOString().slice(0, 16)
    return [log, day ?? '-', ops, last, [title, courseName].filter(Boolean).join(', ') || '-'].join('\t')
  })
  if (!lines.ok) fail(`outings: ${lines.error}`, 1)
  for (const line of lines.value) console.log(line)
}

async function deleteOuting(log: LogId): Promise<void> {
  const known = await readKeptLogs(folder, kept => kept.log)
  if (!known.ok) fail(`outings: ${known.error}`, 1)
  if (!known.value.includes(log)) fail(`outings: no outing here has the id ${log}; npm run outings lists them.`, 1)
  const [warn, failed] = [(line: string) => console.error(line), (error: unknown) => console.error(String(error))]
  try {
    const store = await openSqliteStore({ folder, now: Date.now, newEra, warn, failed })
    await store.bury(log, Date.now())
    await store.close()
  } catch (error) {
    if (!(error instanceof StartFault)) throw error
    const instead = error instanceof FolderHeld ? '; stop the server, or let the desk delete it under Share.' : '.'
    fail(`outings: ${error.message} Nothing was deleted${instead}`, 1)
  }
  console.log(`Deleted for good: ${log}. Phones keep what they hold; old backups hold it too.`)
}

function asked(): string | null {
  try {
    return parseArgs({ options: { delete: { type: 'string' } } }).values.delete ?? null
  } catch {
    return fail('outings: list them with npm run outings, or delete one: npm run outings -- --delete ID', 2)
  }
}
