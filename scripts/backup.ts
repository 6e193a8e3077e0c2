import { makeBackup } from '#server/store/backup.ts'
import { dataFolderNamed, fail, sizeOf } from './keep/data-folder.ts'

/** Writes a whole backup while the server runs: npm run backup -- [FILE or FOLDER]. Standard output is its name alone. */
const [target = null, ...rest] = process.argv.slice(2)
if (rest.length > 0) fail('backup: name one file or folder, or none: npm run backup -- [FILE]', 2)
const made = await makeBackup({ folder: dataFolderNamed('backup'), target, now: Date.now() })
if (!made.ok) fail(`backup: ${made.error}`, 1)
const { file, mark, bytes } = made.value
console.error(`A whole backup of ${mark.source}: ${mark.logs} logs, ${mark.ops} acts, ${sizeOf(bytes)}; checked.`)
console.log(file)
