// Every quantity that the program prints is in docs/nomenclature.md, under the name it is printed with.

import { tableRows } from './markdown.mjs'

const LENGTHS = 'M Cm Mm Um Km M2 M3 L Ml'
const MASSES = 'Kg G Mg T'
const TIMES = 'Days Hours Minutes Seconds Day Hour Minute Second H S Ms'
const OTHERS = 'C K Mps Rad Deg Share Pa Kpa Hpa W Kw Wh Kwh V Lux Coins Ppm'
const SYMBOLS = `(${[LENGTHS, MASSES, TIMES, OTHERS].join(' ').replaceAll(' ', '|')})`

/** How the name of a quantity ends: its unit, plain or of two parts (`areaM2`, `sunWPerM2`, `flowM3PerHour`). */
const UNIT = new RegExp(`[a-z0-9]${SYMBOLS}(Per)?${SYMBOLS}?$|^(days|hours|minutes|seconds|coins)$`)

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
