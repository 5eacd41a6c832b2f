// One process at a time changes the checkout: two terminals may start at once.

import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { errorCode, notReady } from './not-ready.mjs'

const POLL_MS = 200
const PATIENCE_MS = 15 * 60 * 1000

/**
 * Runs `work` while holding the lock file; waits for a living holder and takes over from a dead one.
 *
 * @template T
 * @param {import('./places.mjs').Places} places
 * @param {() => T | Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withLock(places, work) {
  mkdirSync(places.work, { recursive: true })
  const end = Date.now() + PATIENCE_MS
  while (!take(places.lock)) {
    clearDeadHolder(places.lock)
    if (Date.now() > end) {
      throw notReady(`${places.lock} is held by another run. When none is going on, delete that file.`)
    }
    await new Promise((resolve) => setTimeout(resolve, POLL_MS))
  }
  try {
    return await work()
  } finally {
    rmSync(places.lock, { force: true })
  }
}

/** @param {string} lock */
function take(lock) {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' })
    return true
  } catch (error) {
    if (errorCode(error) === 'EEXIST') return false
    throw notReady(`${lock} could not be written (${errorCode(error)}). Make the checkout writable.`)
  }
}

/** @param {string} lock */
function clearDeadHolder(lock) {
  const holder = read(lock)
  if (holder === undefined || isAlive(Number(holder))) return
  // Renamed first: should another process have taken the lock in between, its file is put back.
  const mine = `${lock}.${process.pid}`
  try {
    renameSync(lock, mine)
  } catch {
    return
  }
  if (read(mine) === holder) rmSync(mine, { force: true })
  else renameSync(mine, lock)
}

/** @param {string} path */
function read(path) {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return undefined
  }
}

/** @param {number} pid */
function isAlive(pid) {
  if (!Number.isInteger(pid) || pid <= 0) return false
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return errorCode(error) === 'EPERM'
  }
}
