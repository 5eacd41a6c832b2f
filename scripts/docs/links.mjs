// Every link between files of the checkout leads somewhere, to its anchor too.

import { existsSync } from 'node:fs'
import { join, posix } from 'node:path'

/**
 * @param {object} docs
 * @param {import('./pages.mjs').Pages} docs.pages
 * @param {(path: string) => boolean} docs.exists whether a path from the root is a file or directory
 * @returns {string[]} what leads nowhere
 */
export function linkFaults({ pages, exists }) {
  return [...pages].flatMap(([path, page]) =>
    page.links.flatMap(({ target, line }) => {
      const problem = linkProblem({ path, target, pages, exists })
      return problem === undefined ? [] : [`${path}:${line}: ${problem}`]
    }),
  )
}

/**
 * @param {object} link
 * @param {string} link.path
 * @param {string} link.target
 * @param {import('./pages.mjs').Pages} link.pages
 * @param {(path: string) => boolean} link.exists
 */
function linkProblem({ path, target, pages, exists }) {
  if (/^[a-z][a-z+.-]*:/i.test(target)) return undefined
  const [file = '', anchor] = target.split('#')
  const base = file.startsWith('/') ? '.' : posix.dirname(path)
  const place = file === '' ? path : posix.normalize(posix.join(base, decodeURIComponent(file)))
  if (place.startsWith('..')) return `the link ${target} leads out of the repository`
  if (!exists(place)) return `the link ${target} leads to no file`
  if (anchor === undefined || anchor === '') return undefined
  const found = pages.get(place)?.anchors.has(decodeURIComponent(anchor))
  return found === false ? `the link ${target} leads to no heading` : undefined
}

/**
 * @param {string} root
 * @returns {(path: string) => boolean}
 */
export function existsUnder(root) {
  return (path) => existsSync(join(root, path))
}
