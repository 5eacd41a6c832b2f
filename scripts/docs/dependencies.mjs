// Every package that the project depends on says what it is for, and no package that is gone does.

import { tableRows } from './markdown.mjs'

/** The page whose tables begin with the names of the packages. */
export const DEPENDENCIES_PAGE = 'docs/decisions/0002-dependencies.md'

/**
 * @param {object} docs
 * @param {import('./markdown.mjs').Page} docs.page
 * @param {readonly string[]} docs.packages names in package.json
 * @returns {string[]}
 */
export function dependencyFaults({ page, packages }) {
  const explained = tableRows(page).flatMap(([names = '']) => names.split(/,\s*/))
  return [
    ...packages.filter((name) => !explained.includes(name)).map((name) => `${name} has no row`),
    ...explained.filter((name) => !packages.includes(name)).map((name) => `${name} is no dependency`),
  ].map((fault) => `${DEPENDENCIES_PAGE}: ${fault}`)
}
