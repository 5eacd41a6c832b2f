// Where a checkout keeps what `ready` makes, and what it needs while making it.

import { join } from 'node:path'

/**
 * @typedef {object} Places
 * @property {string} root the checkout
 * @property {string} modules the packages in use
 * @property {string} modulesStamp hash of the lock file and Node they were installed for
 * @property {string} dist the compiled program
 * @property {string} distStamp hash of the sources it was compiled from
 * @property {string} work everything below is made here first and moved into place when it is whole
 * @property {string} lock held by the one process that may change the checkout
 * @property {string} stage the project file, lock file and packages being installed
 * @property {string} oldModules the packages moved aside while the new ones take their place
 * @property {string} nextDist the program being compiled
 * @property {string} oldDist the program moved aside
 */

/**
 * @param {string} root
 * @returns {Places} what is in the making carries this process in its name: a killed run may leave an npm behind that
 *   still writes
 */
export function placesOf(root) {
  const work = join(root, '.ready')
  return {
    root,
    modules: join(root, 'node_modules'),
    modulesStamp: join(root, 'node_modules', '.hardstand-ready'),
    dist: join(root, 'dist'),
    distStamp: join(root, 'dist', '.hardstand-ready'),
    work,
    lock: join(work, 'lock'),
    stage: join(work, `install-${process.pid}`),
    oldModules: join(work, 'old-node_modules'),
    nextDist: join(work, `dist-${process.pid}`),
    oldDist: join(work, 'old-dist'),
  }
}
