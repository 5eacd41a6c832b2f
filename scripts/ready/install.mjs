// Installs the packages of the lock file when they are not those in node_modules. They are installed beside it
// and moved into place when whole: `npm ci` deletes first, and a shed without reception could not get them back.

import { createHash } from 'node:crypto'
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { notReady } from './not-ready.mjs'
import { npmCi } from './npm.mjs'
import { readStamp } from './stamp.mjs'
import { recover, removeTree, swapIn } from './swap.mjs'

const OFFLINE = /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|ENOTCACHED|EHOSTUNREACH/
const LINES_SHOWN = 12

/**
 * What the packages in node_modules depend on: the lock file, and the Node they were built for.
 *
 * @param {string} root
 * @returns {string}
 */
export function lockHash(root) {
  const platform = `${process.platform}-${process.arch}`
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .update(`\0${process.versions.modules}\0${platform}`)
    .digest('hex')
}

/**
 * @param {import('./places.mjs').Places} places
 * @returns {boolean} whether node_modules is what the lock file asks for
 */
export function isInstalled(places) {
  return readStamp(places.modulesStamp) === lockHash(places.root)
}

/**
 * @param {import('./places.mjs').Places} places
 * @param {NodeJS.ProcessEnv} env
 * @param {(line: string) => void} say
 */
export function install(places, env, say) {
  recover({ place: places.modules, aside: places.oldModules })
  if (isInstalled(places)) return
  const wanted = lockHash(places.root)
  stageProject(places)
  say('Installing the packages of package-lock.json. This happens once and takes about a minute.')
  const result = npmCi(places.stage, env)
  if (!result.ok) {
    removeTree(places.stage)
    throw notReady(failure(result, existsSync(places.modules)))
  }
  const next = join(places.stage, 'node_modules')
  mkdirSync(next, { recursive: true })
  writeFileSync(join(next, '.hardstand-ready'), `${wanted}\n`)
  swapIn({ next, place: places.modules, aside: places.oldModules })
  removeTree(places.stage)
}

/** @param {import('./places.mjs').Places} places */
function stageProject({ root, stage }) {
  mkdirSync(stage, { recursive: true })
  for (const name of ['package-lock.json', '.npmrc']) {
    if (existsSync(join(root, name))) copyFileSync(join(root, name), join(stage, name))
  }
  const { scripts: _, ...project } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  writeFileSync(join(stage, 'package.json'), JSON.stringify(project, null, 2))
}

/**
 * @param {{ missing: boolean, output: string }} result
 * @param {boolean} kept whether an older node_modules is still there
 */
function failure({ missing, output }, kept) {
  if (missing)
    return 'The packages are not installed and npm was not found. Install npm, then run the command again.'
  const offline = OFFLINE.test(output)
  const sentence = [
    offline
      ? 'The packages could not be fetched: the package registry was not reached. Connect, then run the command again.'
      : 'The packages could not be installed; npm says why above.',
    ...(kept ? ['The packages installed before are untouched.'] : []),
  ].join(' ')
  return `${output.split('\n').slice(-LINES_SHOWN).join('\n')}\n\n${sentence}`
}
