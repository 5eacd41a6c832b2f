// Compiles src/ into dist/ when the sources are not those it was compiled from. A new directory takes the place of
// the old one, so no file of a source that is gone stays behind, and a failed build leaves the old program whole.

import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join, relative, sep } from 'node:path'
import { ended } from '../spawned.mjs'
import { notReady } from './not-ready.mjs'
import { readStamp } from './stamp.mjs'
import { recover, removeTree, swapIn } from './swap.mjs'

const CONFIGS = [
  'tsconfig.base.json',
  'tsconfig.build.json',
  'vite.config.ts',
  'package.json',
  'package-lock.json',
]
const PROGRAM = join('cli', 'main.js')

/**
 * @param {string} root
 * @returns {string} hash of everything the compiled program is made from
 */
export function sourceHash(root) {
  const hash = createHash('sha256')
  for (const path of [...CONFIGS, ...sourceFiles(root)]) {
    if (!existsSync(join(root, path))) continue
    hash
      .update(`${path.split(sep).join('/')}\0`)
      .update(readFileSync(join(root, path)))
      .update('\0')
  }
  return hash.digest('hex')
}

/**
 * @param {import('./places.mjs').Places} places
 * @returns {boolean} whether dist/ is what the sources compile to
 */
export function isBuilt(places) {
  return readStamp(places.distStamp) === sourceHash(places.root)
}

/**
 * @param {import('./places.mjs').Places} places
 */
export function build(places) {
  recover({ place: places.dist, aside: places.oldDist })
  if (isBuilt(places)) return
  const wanted = sourceHash(places.root)
  const { ok, output } = compile(places)
  if (!ok) {
    removeTree(places.nextDist)
    throw notReady(`${output}\n\nThe program does not compile; the lines above say where.`)
  }
  copyOtherFiles(places)
  const program = join(places.nextDist, PROGRAM)
  if (existsSync(program)) chmodSync(program, 0o755)
  writeFileSync(join(places.nextDist, '.hardstand-ready'), `${wanted}\n`)
  swapIn({ next: places.nextDist, place: places.dist, aside: places.oldDist })
}

/** @param {import('./places.mjs').Places} places */
function compile({ root, nextDist }) {
  mkdirSync(nextDist, { recursive: true })
  const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc')
  const args = [tsc, '-p', join(root, 'tsconfig.build.json'), '--outDir', nextDist, '--noEmitOnError']
  const program = run(root, args)
  return program.ok ? bundlePages({ root, nextDist }) : program
}

/**
 * The pages are bundled by their own tool into `web/`; a checkout without pages has none.
 *
 * @param {{ root: string, nextDist: string }} places
 */
function bundlePages({ root, nextDist }) {
  if (!existsSync(join(root, 'vite.config.ts'))) return { ok: true, output: '' }
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js')
  return run(root, [vite, 'build', '--logLevel', 'warn', '--outDir', join(nextDist, 'web')])
}

/**
 * @param {string} root
 * @param {readonly string[]} args
 */
function run(root, args) {
  return ended(spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8', maxBuffer: 1 << 26 }))
}

/**
 * Tables and fonts that sources read at run time stand beside them in dist/ too.
 *
 * @param {import('./places.mjs').Places} places
 */
function copyOtherFiles({ root, nextDist }) {
  const web = join('src', 'web') + sep
  for (const path of sourceFiles(root).filter((file) => !file.startsWith(web))) {
    const target = join(nextDist, relative('src', path))
    if (/\.(ts|tsx|md)$/.test(path) || existsSync(target)) continue
    mkdirSync(dirname(target), { recursive: true })
    copyFileSync(join(root, path), target)
  }
}

/**
 * @param {string} root
 * @returns {string[]} every file under src/ but tests, sorted, relative to the root
 */
function sourceFiles(root) {
  if (!existsSync(join(root, 'src'))) return []
  return readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.test\.tsx?$/.test(entry.name))
    .map((entry) => join(relative(root, entry.parentPath ?? entry.path), entry.name))
    .sort()
}
