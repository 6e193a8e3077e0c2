import { parseArgs } from 'node:util'
import { newEra } from '#server/store/era.ts'
import { restoreBackup } from '#server/store/restore.ts'
import { dataFolderNamed, fail } from './keep/data-folder.ts'

/** Puts a backup in the place of the database: npm run restore -- FILE [--bring-back-deleted]. The server is stopped. */
const { file, bringsBackDeleted } = asked()
const folder = dataFolderNamed('restore')
const restored = await restoreBackup({ folder, file, bringsBackDeleted, now: Date.now(), newEra })
if (!restored.ok) fail(`restore: ${restored.error}`, 1)
const { mark, keptAside, stillDeleted, knowsDeleted } = restored.value
console.log(`${folder} is what it was at ${new Date(mark.at).toISOString()}: ${mark.logs} logs, ${mark.ops} acts.`)
if (keptAside !== null) console.log(`The database that was there lies in ${keptAside}; delete it when all is well.`)
if (stillDeleted > 0) {
  console.log(`Deleted since and still so: ${stillDeleted}. With --bring-back-deleted they would be back.`)
}
if (!knowsDeleted) {
  console.log('What was deleted since cannot be read from the old database: such outings are back; delete them again.')
}
console.log('Start the server: phones compare what they hold and send what the backup lacks.')

function asked() {
  const usage = 'restore: name the backup: npm run restore -- FILE [--bring-back-deleted]'
  try {
    const options = { 'bring-back-deleted': { type: 'boolean', default: false } } as const
    const { values, positionals } = parseArgs({ options, allowPositionals: true })
    const [name, ...rest] = positionals
    if (name === undefined || rest.length > 0) fail(usage, 2)
    return { file: name, bringsBackDeleted: values['bring-back-deleted'] }
  } catch {
    return fail(usage, 2)
  }
}
