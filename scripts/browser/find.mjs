// Where a Chromium stands on this machine, and what to say when none does.

import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome']
const PLACES = [
  '/usr/bin',
  '/usr/local/bin',
  '/snap/bin',
  '/Applications/Chromium.app/Contents/MacOS',
  'C:\\Program Files\\Chromium\\Application',
]

export const NO_BROWSER =
  'The browser tests need Chromium: install it (on Debian `apt-get install chromium`), or name a browser in HARDSTAND_CHROMIUM.'

/**
 * @param {object} [options]
 * @param {NodeJS.ProcessEnv} [options.env] `HARDSTAND_CHROMIUM` names a browser; then no other is looked for
 * @param {(path: string) => boolean} [options.runs] whether a program stands there
 * @returns {string | undefined} its path
 */
export function findBrowser({ env = process.env, runs = isProgram } = {}) {
  const named = env.HARDSTAND_CHROMIUM
  if (named) return runs(named) ? named : undefined
  const folders = [...(env.PATH ?? '').split(delimiter).filter(Boolean), ...PLACES]
  return NAMES.flatMap((name) =>
    folders.flatMap((folder) => [join(folder, name), join(folder, `${name}.exe`)]),
  ).find((path) => runs(path))
}

/** Chromium refuses to run as root inside its own sandbox; a machine that tests has seldom a graphics card. */
export function browserArguments() {
  return ['--disable-gpu', '--disable-dev-shm-usage', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])]
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}
