// Install, then build when asked; the quick way out when there is nothing to do.

import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build, isBuilt } from './build.mjs'
import { install, isInstalled } from './install.mjs'
import { withLock } from './lock.mjs'
import { placesOf } from './places.mjs'
import { clearLeftovers } from './swap.mjs'

/** The checkout that these scripts belong to. */
export const ROOT = dirname(dirname(dirname(fileURLToPath(import.meta.url))))

/**
 * @param {object} options
 * @param {boolean} options.build compile dist/ too
 * @param {string} [options.root]
 * @param {NodeJS.ProcessEnv} [options.env]
 * @param {(line: string) => void} [options.say] told what takes long
 * @returns {Promise<void>} rejects with an error that has a `sentence` when the checkout cannot be made ready
 */
export async function ready({ build: wantsBuild, root = ROOT, env = process.env, say = console.error }) {
  const places = placesOf(root)
  if (isInstalled(places) && (!wantsBuild || isBuilt(places))) return
  await withLock(places, () => {
    clearLeftovers(places.work)
    install(places, env, say)
    if (wantsBuild) build(places)
  })
}
