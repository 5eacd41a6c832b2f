// A stamp is one line that says what a directory was made from; no stamp means that it was not finished by us.

import { readFileSync } from 'node:fs'

/**
 * @param {string} path
 * @returns {string | undefined}
 */
export function readStamp(path) {
  try {
    return readFileSync(path, 'utf8').trim()
  } catch {
    return undefined
  }
}
