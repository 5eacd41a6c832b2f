// Puts a finished directory in the place of another so that, killed at any moment, one whole directory is left to use.

import { existsSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { errorCode, notReady } from './not-ready.mjs'

/**
 * @typedef {object} Swap
 * @property {string} next the finished directory
 * @property {string} place where it belongs
 * @property {string} aside where the one in use waits meanwhile
 */

/** @param {string} path */
export function removeTree(path) {
  rmSync(path, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 })
}

/**
 * Moves `place` aside and `next` into it; puts the old one back when that fails.
 *
 * @param {Swap} swap
 */
export function swapIn({ next, place, aside }) {
  try {
    if (existsSync(place)) renameSync(place, aside)
    renameSync(next, place)
  } catch (error) {
    recover({ place, aside })
    throw notReady(
      `${place} could not be replaced (${errorCode(error)}): another program has it open, or it is a mounted ` +
        'directory. The old one is kept. Close what uses it, then run the command again.',
    )
  }
  removeTree(aside)
}

/**
 * Undoes a swap that was cut off between its two moves, and clears what a finished one left behind.
 *
 * @param {Pick<Swap, 'place' | 'aside'>} swap
 */
export function recover({ place, aside }) {
  if (!existsSync(aside)) return
  if (existsSync(place)) removeTree(aside)
  else renameSync(aside, place)
}

/**
 * Clears what killed runs left half made; what cannot go yet goes another time.
 *
 * @param {string} work
 */
export function clearLeftovers(work) {
  for (const name of readdirSync(work)) {
    if (!/^(install|dist)-\d+$/.test(name)) continue
    try {
      removeTree(join(work, name))
    } catch {
      // The npm of a killed run is still writing there.
    }
  }
}
