// Seeded edits of a job, as a person at the desk makes them: a size, a coat, an hour, a price.

import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

/**
 * @param {{ work: Record<string, Record<string, unknown>>, money?: Record<string, Record<string, unknown>> }} raw
 * @param {{ count: number, seed: number }} options
 * @returns {{ part: 'work' | 'money', path: string[], text: string }[]}
 */
export function seededEdits(raw, { count, seed }) {
  const random = xoroshiro128plus(seed)
  const below = (/** @type {number} */ n) => Number(BigInt(random.next() >>> 0) % BigInt(n))
  const pick = (/** @type {readonly string[]} */ list) => list[below(list.length)] ?? ''
  const ids = (/** @type {string} */ section) => Object.keys(raw.work[section] ?? {})
  const tenth = (/** @type {number} */ least, /** @type {number} */ steps) =>
    (least + below(steps) / 10).toFixed(1)
  const kinds = [
    () => work(['boat', 'beam'], `${tenth(2.4, 4)} m`),
    () => work(['boat', 'freeboardMid'], `${(0.85 + below(20) / 100).toFixed(2)} m`),
    () => work(['zones', 'foredeck', 'area'], `${tenth(3, 12)} m²`),
    () => work(['findings', pick(ids('findings')), 'hours'], `${tenth(1, 60)} h`),
    () => work(['fittings', pick(ids('fittings')), 'hoursOff'], `${tenth(0.2, 20)} h`),
    () => work(['layers', pick(ids('layers')), 'coats'], String(1 + below(3))),
    () => work(['layers', pick(ids('layers')), 'thinnerShare'], `${below(15)} %`),
    () => work(['sheets', pick(ids('sheets')), 'airLeast'], `${8 + below(5)} °C`),
    () => work(['job', 'owner'], `Owner ${below(100)}`),
    () => work(['packs', pick(ids('packs')), 'inStock'], String(below(3))),
    () => money(['terms', 'margin'], `${below(40)} %`),
  ]
  const pickKind = () => {
    const kind = kinds[below(kinds.length)]
    if (!kind) throw new RangeError('edits: no kind')
    return kind()
  }
  return Array.from({ length: count }, pickKind)
}

const work = (/** @type {string[]} */ path, /** @type {string} */ text) => ({
  part: /** @type {const} */ ('work'),
  path,
  text,
})
const money = (/** @type {string[]} */ path, /** @type {string} */ text) => ({
  part: /** @type {const} */ ('money'),
  path,
  text,
})

/**
 * A copy of the document with the edit made; what it does not touch keeps its identity.
 *
 * @template T
 * @param {T} raw
 * @param {{ part: string, path: string[], text: string }} edit
 * @returns {T}
 */
export const withEdit = (raw, { part, path, text }) => /** @type {T} */ (setIn(raw, [part, ...path], text))

/**
 * @param {unknown} node
 * @param {readonly string[]} path
 * @param {string} text
 * @returns {unknown}
 */
function setIn(node, [key, ...rest], text) {
  if (key === undefined) return text
  const map = typeof node === 'object' && node !== null ? /** @type {Record<string, unknown>} */ (node) : {}
  return { ...map, [key]: setIn(map[key], rest, text) }
}
