// Every quantity that the program prints is in docs/nomenclature.md, under the name it is printed with.

import { tableRows } from './markdown.mjs'

/** How the name of a quantity ends: its unit. */
const UNIT =
  /([a-z0-9](M|Mm|Cm|Um|Km|M2|M3|L|Ml|Kg|G|T|C|K|H|S|W|Kw|Wh|Pa|HPa|KPa|KPascal|V|A|Lux|Deg|Rad|Share|Hours?|Minutes?|Seconds?|Days?|Coins?|MPerS|WM2|KgM2|KgM3|GM2|GM3|GPerM3|M3PerH|MgM3|Ppm|Ach)|^(hours|minutes|seconds|days|share))$/

/**
 * @param {unknown} value read from JSON
 * @returns {Set<string>} the keys in it that carry a unit
 */
export function quantityKeys(value) {
  if (Array.isArray(value)) return new Set(value.flatMap((item) => [...quantityKeys(item)]))
  if (typeof value !== 'object' || value === null) return new Set()
  const own = Object.entries(value)
    .filter(
      ([key, inner]) =>
        UNIT.test(key) && (typeof inner === 'number' || inner === null || Array.isArray(inner)),
    )
    .map(([key]) => key)
  return new Set([...own, ...Object.values(value).flatMap((inner) => [...quantityKeys(inner)])])
}

/**
 * @param {object} docs
 * @param {import('./markdown.mjs').Page} docs.page docs/nomenclature.md; its tables begin with the name
 * @param {ReadonlyMap<string, string>} docs.keys the command that prints each quantity
 * @returns {string[]}
 */
export function nomenclatureFaults({ page, keys }) {
  const named = new Set(tableRows(page).flatMap(([name = '']) => name.match(/\w+/g) ?? []))
  return [...keys]
    .filter(([key]) => !named.has(key))
    .sort()
    .map(([key, command]) => `docs/nomenclature.md: ${key} is missing, which "${command}" prints`)
}
