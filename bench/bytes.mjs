// How much has to be loaded before the first plan: every module that `#plan`, `#job` and `#words` reach, own code and
// packages apart, plain and gzipped. A bundler makes less of it; the figures are for watching it grow.
//
//     npm run build && node bench/bytes.mjs [--json]

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { gzipSync } from 'node:zlib'

const ROOT = new URL('../', import.meta.url)
const DOORS = ['plan', 'job', 'words'].map((room) => new URL(`dist/${room}/index.js`, ROOT).href)
const IMPORT = /(?:^|[\s;}])(?:import|export)\s*(?:[^'"();]*?from\s*)?['"]([^'"]+)['"]/g

/** @type {Set<string>} */
const seen = new Set()
const queue = [...DOORS]
for (let url = queue.pop(); url !== undefined; url = queue.pop()) {
  if (seen.has(url)) continue
  seen.add(url)
  queue.push(...importsOf(url))
}

/**
 * @param {string} url
 * @returns {string[]}
 */
function importsOf(url) {
  const text = readFileSync(fileURLToPath(url), 'utf8')
  return [...text.matchAll(IMPORT)].flatMap((match) => resolved(match[1] ?? '', url))
}

/**
 * @param {string} name
 * @param {string} from
 * @returns {string[]}
 */
function resolved(name, from) {
  if (name.startsWith('.')) return [new URL(name, from).href]
  if (name.startsWith('node:')) return []
  if (name.startsWith('#core/')) return [new URL(`dist/core/${name.slice(6)}/index.js`, ROOT).href]
  if (name.startsWith('#')) return [new URL(`dist/${name.slice(1)}/index.js`, ROOT).href]
  try {
    return [import.meta.resolve(name)].filter((found) => found.startsWith('file:'))
  } catch {
    return [pathToFileURL(createRequire(from).resolve(name)).href]
  }
}

const parts = { own: /** @type {string[]} */ ([]), packages: /** @type {string[]} */ ([]) }
for (const url of seen) parts[url.includes('/node_modules/') ? 'packages' : 'own'].push(url)

const result = Object.fromEntries(
  Object.entries(parts).map(([name, urls]) => {
    const all = Buffer.concat(urls.map((url) => readFileSync(fileURLToPath(url))))
    return [name, { modules: urls.length, bytes: all.length, gzipBytes: gzipSync(all, { level: 9 }).length }]
  }),
)

if (process.argv.includes('--json')) console.log(JSON.stringify(result, null, 2))
else for (const [name, part] of Object.entries(result)) console.log(name.padEnd(9), JSON.stringify(part))
