// Reads the sources of a checkout for the checkers.

import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'

/**
 * @param {string} root
 * @returns {import('./check-layers.mjs').Tree}
 */
export function readTree(root) {
  const { dependencies = {} } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  const files = new Map(
    readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
      .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
      .map((path) => [relative(root, path).split(sep).join('/'), readFileSync(path, 'utf8')]),
  )
  return { files, packages: Object.keys(dependencies) }
}
