import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The product's own folder. */
export const root = fileURLToPath(new URL('../..', import.meta.url))

/** Where logs, reports and the lock lie; may be deleted at any time. */
export const cache = join(root, '.cache')
