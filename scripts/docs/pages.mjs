// Every Markdown file of the checkout.

import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { readPage } from './markdown.mjs'

/** @typedef {Map<string, import('./markdown.mjs').Page>} Pages by path from the root, with forward slashes */

const MADE = new Set(['node_modules', 'dist', 'out', 'coverage', '.git', '.ready'])

/**
 * @param {string} root
 * @returns {Pages}
 */
export function readPages(root) {
  return new Map(
    markdownUnder(root)
      .sort()
      .map((path) => [relative(root, path).split(sep).join('/'), readPage(readFileSync(path, 'utf8'))]),
  )
}

/**
 * @param {string} directory
 * @returns {string[]}
 */
function markdownUnder(directory) {
  return readdirSync(directory, { withFileTypes: true }).flatMap((entry) => {
    const path = join(directory, entry.name)
    if (entry.isDirectory()) return MADE.has(entry.name) ? [] : markdownUnder(path)
    return entry.name.endsWith('.md') ? [path] : []
  })
}
