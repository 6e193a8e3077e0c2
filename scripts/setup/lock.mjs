import { mkdirSync, readdirSync, renameSync, rmSync, statSync, unlinkSync, utimesSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'

const beatMs = 2_000
// A holder that has not touched its file for so long is gone, even if its number now names another process.
const deadAfterMs = 60_000
const pollMs = 100

/**
 * Runs the work while no other process holds the lock, a folder with one file named after the holder's process id.
 * The folder is put in place by a rename, which succeeds only over nothing or over an empty folder: one holder at a time.
 * @template T
 * @param {string} folder
 * @param {() => void} onWait called once if another process is at work
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withLock(folder, onWait, work) {
  await take(folder, onWait)
  const own = join(folder, String(process.pid))
  const beat = setInterval(() => touch(own), beatMs)
  const onExit = () => release(folder)
  process.once('exit', onExit)
  try {
    return await work()
  } finally {
    clearInterval(beat)
    process.off('exit', onExit)
    release(folder)
  }
}

/**
 * @param {string} folder
 * @param {() => void} onWait
 */
async function take(folder, onWait) {
  mkdirSync(dirname(folder), { recursive: true })
  const candidate = `${folder}.${process.pid}`
  mkdirSync(candidate, { recursive: true })
  const own = join(candidate, String(process.pid))
  writeFileSync(own, '')
  let waiting = false
  while (!isTaken(candidate, folder)) {
    if (removeDead(folder)) continue
    if (!waiting) onWait()
    waiting = true
    await sleep(pollMs)
    touch(own)
  }
}

/**
 * @param {string} candidate
 * @param {string} folder
 * @returns {boolean} whether the lock is now ours
 */
function isTaken(candidate, folder) {
  try {
    renameSync(candidate, folder)
    return true
  } catch (error) {
    if (codeOf(error) === 'ENOTEMPTY' || codeOf(error) === 'EEXIST') return false
    throw error
  }
}

/**
 * @param {string} folder
 * @returns {boolean} whether a holder that is gone was taken off the lock
 */
function removeDead(folder) {
  const [holder] = namesIn(folder)
  if (holder === undefined) return true
  if (isAlive(folder, holder)) return false
  return remove(join(folder, holder))
}

/**
 * @param {string} folder
 * @param {string} holder
 */
function isAlive(folder, holder) {
  const touched = statSync(join(folder, holder), { throwIfNoEntry: false })?.mtimeMs
  if (touched === undefined || Date.now() - touched > deadAfterMs) return false
  try {
    process.kill(Number(holder), 0)
    return true
  } catch (error) {
    return codeOf(error) === 'EPERM'
  }
}

/** @param {string} folder */
function release(folder) {
  remove(join(folder, String(process.pid)))
  try {
    if (namesIn(folder).length === 0) rmSync(folder, { recursive: true, force: true })
  } catch {
    // The next holder is already in.
  }
}

/** @param {string} folder */
function namesIn(folder) {
  try {
    return readdirSync(folder)
  } catch {
    return []
  }
}

/** @param {string} file */
function remove(file) {
  try {
    unlinkSync(file)
    return true
  } catch {
    return false
  }
}

/** @param {string} file */
function touch(file) {
  try {
    const now = new Date()
    utimesSync(file, now, now)
  } catch {
    // Taken off as dead by another process: the work goes on and is repeated there.
  }
}

/** @param {unknown} error */
function codeOf(error) {
  return error instanceof Error && 'code' in error ? error.code : null
}
