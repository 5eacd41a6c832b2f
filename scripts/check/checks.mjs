// What `npm run check` holds the checkout against.

import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { docsChecks } from '../docs/checks.mjs'
import { ended } from '../spawned.mjs'

/** @typedef {import('./run-checks.mjs').Check} Check */

const BIOME = 'node_modules/@biomejs/biome/bin/biome'
const TSC = 'node_modules/typescript/bin/tsc'

/**
 * @param {string} root
 * @returns {Check[]}
 */
export function checksOf(root) {
  return [
    { name: 'format and lint', run: () => script(root, [BIOME, 'check', '--colors=off', '.']) },
    { name: 'types', run: () => script(root, [TSC, '-p', 'tsconfig.json', '--pretty', 'false']) },
    {
      name: 'types of core, without Node and browser',
      run: () => script(root, [TSC, '-p', 'tsconfig.core.json', '--pretty', 'false']),
    },
    {
      name: 'types of the web app',
      run: () => script(root, [TSC, '-p', 'tsconfig.web.json', '--pretty', 'false']),
    },
    { name: 'the program builds', run: () => script(root, ['scripts/ready.mjs', '--build']) },
    { name: 'layers', run: () => script(root, ['scripts/layers.mjs']) },
    ...docsAsChecks(root, docsChecks),
  ]
}

/**
 * @param {string} root
 * @param {readonly import('../docs/checks.mjs').DocsCheck[]} checks
 * @returns {Check[]}
 */
export function docsAsChecks(root, checks) {
  return checks.map(({ name, run }) => ({
    name: `docs: ${name}`,
    run: () => {
      const { faults, remarks, skipped } = run(root)
      return {
        ok: faults.length === 0,
        output: faults.join('\n'),
        remarks,
        ...(skipped === undefined ? {} : { skipped }),
      }
    },
  }))
}

/**
 * @param {string} root
 * @param {readonly string[]} args a script with its arguments
 */
function script(root, [file = '', ...args]) {
  const options = /** @type {const} */ ({ cwd: root, encoding: 'utf8', maxBuffer: 1 << 26 })
  return ended(spawnSync(process.execPath, [join(root, file), ...args], options))
}
