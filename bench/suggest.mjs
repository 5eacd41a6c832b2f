// How long it takes to suggest build-ups out of 60 sheets, against a fixed loop in the same run. Over gelcoat with a
// vinylester filling, over a coating that nobody knows, and where no way holds and the nearest miss is looked for.
//
//     npm run build && node bench/suggest.mjs [--gate] [--json]

import { readFileSync } from 'node:fs'
import { catalogue } from '#catalogue'
import { suggest } from '#core/coating'
import { bondBook } from '#plan'
import { calibrationLoop } from './harness.mjs'
import { median } from './statistics.mjs'

const SHEETS = 60
const ROUNDS = 30

const book = bondBook(catalogue)

/** @param {number} seed */
function random(seed) {
  let state = seed
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0
    return (state >>> 8) / 2 ** 24
  }
}

/** @type {readonly (readonly [string, string])[]} */
const kinds = [
  ['epoxy', 'primer'],
  ['epoxy', 'tie coat'],
  ['two-part polyurethane', 'primer'],
  ['two-part polyurethane', 'finish'],
  ['one-part', 'primer'],
  ['one-part', 'finish'],
  ['acrylic', 'non-skid'],
  ['gelcoat', 'finish'],
  ['vinylester', 'tie coat'],
]
const next = random(20270412)
const pick = (/** @type {readonly any[]} */ from) => from[Math.floor(next() * from.length)]
const offers = Array.from({ length: SHEETS }, (_, at) => {
  const [family, role] = pick(kinds)
  return {
    id: `sheet-${at}`,
    family,
    role,
    shade: pick(['light', 'dark']),
    colour: pick(['white', 'dark blue', 'cream', 'signal red']),
    clocks: { recoatLeastH: 4 + next() * 20, recoatMostH: 10 + next() * 160, drySandH: 8 + next() * 20 },
    litresPerM2: 0.05 + next() * 0.2,
    coinsPerL: Math.round(2000 + next() * 6000),
    dryFilmM: 20e-6,
  }
})

const old = (/** @type {string} */ family, /** @type {string} */ role) => ({
  family,
  role,
  age: /** @type {const} */ ('old'),
  states: [],
})
const exposed = (/** @type {any} */ own) => ({
  id: 'ground',
  maybe: [],
  clocks: {},
  colour: '',
  cleared: [],
  ...own,
})
const filler = exposed({
  id: 'crack',
  material: { family: 'vinylester', role: 'filler', age: 'fresh', states: [] },
})
const search = (/** @type {any} */ own) => ({
  where: /** @type {const} */ ('above water'),
  areaM2: 18,
  offers,
  wish: { role: 'finish' },
  mostLayers: 8,
  ...own,
})
const searches = {
  mended: search({ ground: [exposed({ material: old('gelcoat', 'finish') }), filler] }),
  unknown: search({
    ground: [
      exposed({
        material: old('unknown', ''),
        maybe: [old('one-part', 'finish'), old('lacquer', 'finish'), old('gelcoat', 'finish')],
      }),
    ],
  }),
  none: search({
    ground: [exposed({ material: old('gelcoat', 'finish') }), filler],
    offers: offers.filter(({ family }) => family !== 'epoxy'),
    wish: { role: 'finish', family: 'two-part polyurethane' },
  }),
}

/** @param {() => unknown} run */
function timed(run) {
  const start = performance.now()
  run()
  return performance.now() - start
}

const rounds = Array.from({ length: ROUNDS }, () => ({
  loop: timed(calibrationLoop),
  ...Object.fromEntries(
    Object.entries(searches).map(([name, one]) => [name, timed(() => suggest(book, one))]),
  ),
}))
const loopMs = median(rounds.map(({ loop }) => loop))
/** @type {Record<string, number>} */
const result = { sheets: SHEETS, loopMs }
for (const name of Object.keys(searches)) {
  const ms = median(rounds.map((round) => /** @type {Record<string, number>} */ (round)[name] ?? Number.NaN))
  result[`${name}Ms`] = ms
  result[`${name}Loops`] = ms / loopMs
}

if (process.argv.includes('--json')) console.log(JSON.stringify(result, null, 2))
else
  for (const [key, value] of Object.entries(result))
    console.log(`${key.padEnd(14)} ${Number(value.toPrecision(4))}`)

if (process.argv.includes('--gate')) {
  const most = JSON.parse(readFileSync(new URL('./baseline.json', import.meta.url), 'utf8')).mostLoops
    .suggestLoops
  const slow = Object.keys(searches).filter((name) => (result[`${name}Loops`] ?? Number.NaN) > most)
  for (const name of slow)
    console.error(`bench: ${name} takes ${result[`${name}Loops`]} loops, at most ${most}`)
  process.exitCode = slow.length === 0 ? 0 : 1
}
