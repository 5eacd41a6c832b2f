// Makes sure that there is a browser for the browser tests: installs one where that is allowed (as root, with
// apt-get), else says in one sentence what is missing.

import { spawnSync } from 'node:child_process'
import { findBrowser, NO_BROWSER } from './browser/find.mjs'

if (findBrowser() === undefined && !process.env.HARDSTAND_CHROMIUM && process.getuid?.() === 0) install()
if (findBrowser() === undefined) {
  console.error(NO_BROWSER)
  process.exitCode = 1
}

function install() {
  if (spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status !== 0) return
  console.error('Installing Chromium for the browser tests.')
  /** @type {import('node:child_process').SpawnSyncOptions} */
  const options = {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  }
  spawnSync('apt-get', ['update', '-qq'], options)
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], options)
}
