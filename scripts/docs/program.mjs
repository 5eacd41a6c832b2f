// The compiled program, run as a person would run it.

import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { isBuilt } from '../ready/build.mjs'
import { placesOf } from '../ready/places.mjs'

/**
 * @typedef {{ status: number | null, stdout: string, stderr: string }} Run
 * @typedef {(args: readonly string[], options?: { cwd?: string, input?: string }) => Run} Program
 */

const PATIENCE_MS = 120_000

/**
 * @param {string} root
 * @returns {Program | string} the program, or why it cannot be run
 */
export function programOf(root) {
  const places = placesOf(root)
  const main = join(places.dist, 'cli', 'main.js')
  if (!existsSync(join(root, 'src', 'cli', 'main.ts'))) return 'there is no src/cli/main.ts yet'
  if (!existsSync(main)) return 'dist/ is not built: node scripts/ready.mjs --build'
  if (!isBuilt(places)) return 'dist/ is older than src/: node scripts/ready.mjs --build'
  const { FORCE_COLOR: _, ...outer } = process.env
  const env = { ...outer, TZ: 'UTC', LC_ALL: 'C.UTF-8', LANG: 'C.UTF-8', NO_COLOR: '1', COLUMNS: '100' }
  return (args, { cwd = root, input = '' } = {}) => {
    const done = spawnSync(process.execPath, [main, ...args], {
      cwd,
      env,
      input,
      encoding: 'utf8',
      timeout: PATIENCE_MS,
      maxBuffer: 1 << 28,
    })
    return { status: done.status, stdout: done.stdout, stderr: done.stderr }
  }
}

/**
 * Whether the program broke instead of saying what is wrong: killed, an exit code of its own, or a stack trace.
 *
 * @param {Run} run
 */
export function isCrash({ status, stderr }) {
  return status === null || status > 2 || /^\s+at .*:\d+:\d+\)?$/m.test(stderr)
}
