import { accessSync, constants, mkdirSync, readFileSync, statfsSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { FolderHeld, StartFault } from '../start-fault.ts'
import { lockFile } from './database-file.ts'
import { loadDriver } from './driver.ts'

/** A folder that this process alone writes. */
export interface DataFolder {
  readonly path: string
  /** What to tell whoever runs the server, or null. */
  readonly warning: string | null
  release(): void
}

/** NFS, SMB, CIFS, FUSE and 9p: their locks and shared memory do not keep a database whole. */
const networkFileSystems = new Set([0x6969, 0x517b, 0xff534d42, 0xfe534d42, 0x65735546, 0x01021997])

/**
 * Makes and takes the folder. The lock is the operating system's, held by an open transaction on a database of its
 * own: it ends with the process however that ends, so a dead process leaves none.
 */
export async function takeDataFolder(folder: string): Promise<DataFolder> {
  const path = resolve(folder)
  makeWritable(path)
  const { DatabaseSync } = await loadDriver()
  const lock = new DatabaseSync(lockFile(path))
  try {
    lock.exec('PRAGMA busy_timeout = 0')
    lock.exec('BEGIN EXCLUSIVE')
  } catch {
    lock.close()
    throw new FolderHeld(`Another server${holderOf(path)} uses the data folder ${path}.`)
  }
  writeFileSync(join(path, 'server.pid'), String(process.pid))
  return { path, warning: warningOf(path), release: () => lock.close() }
}

function makeWritable(path: string): void {
  try {
    mkdirSync(path, { recursive: true })
    accessSync(path, constants.W_OK)
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? 'unknown'
    throw new StartFault(`The data folder ${path} cannot be written (${code}); set DATA_DIR to one that can.`)
  }
}

function holderOf(path: string): string {
  try {
    return ` (process ${Number(readFileSync(join(path, 'server.pid'), 'utf8'))})`
  } catch {
    return ''
  }
}

/** By the number that statfs gives, signed or not. */
export const isNetworkFileSystem = (type: number): boolean => networkFileSystems.has(type >>> 0)

const warningOf = (path: string): string | null =>
  isNetworkFileSystem(statfsSync(path).type)
    ? `The data folder ${path} is on a network file system, where a database can break; use a local disk.`
    : null
