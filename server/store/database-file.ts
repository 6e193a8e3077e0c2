import { join } from 'node:path'

/** The embedded database inside its data folder; SQLite keeps a log and an index of it beside it. */
export const databaseFile = (folder: string): string => join(folder, 'six-threes.db')

/** Put after the database's name. */
export const companions = ['', '-wal', '-shm'] as const

/** A restored database that waits to take its place: while it is there, the folder holds a restore that was cut short. */
export const restoredFile = (folder: string): string => join(folder, 'restored.db')

/** What the process that has the folder holds; it is there from the first use on. */
export const lockFile = (folder: string): string => join(folder, 'lock.db')

/** What says when the last backup was made. */
export const lastBackupFile = (folder: string): string => join(folder, 'last-backup.json')

/** A time, milliseconds since 1970, as it can stand in a file's name: to the second, UTC. */
export const timeInName = (at: number): string => `${new Date(at).toISOString().slice(0, 19).replaceAll(':', '')}Z`
