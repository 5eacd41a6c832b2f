// One picture: a sheet of the sample job, drawn whole, cut to the window.

import { join } from 'node:path'

/** A day of gloss on the sample boat. */
const HOUR = '2027-06-09T06:30:00Z'
const JOB = '/job/open-powerboat'
const SIZES = /** @type {const} */ ([
  { width: 1600, height: 900 },
  { width: 360, height: 740 },
])
const SHEETS = [
  { name: 'new', path: '/new' },
  { name: 'today', path: `${JOB}/today` },
  { name: 'boat', path: `${JOB}/boat` },
  {
    name: 'solid',
    path: `${JOB}/boat`,
    kept: { boat: 'solid', 'boat-finish': 'painted' },
    drawn: '[data-drawn=space]',
  },
  { name: 'deck', path: '/job/deck-only/boat', part: '#deck-plan', zone: 'cabin-top' },
  { name: 'build-up', path: `${JOB}/build-up` },
  { name: 'days', path: `${JOB}/days`, part: '.days-chart, .days-upright' },
  { name: 'papers', path: `${JOB}/papers` },
  { name: 'sums', path: '/sums/dew' },
  { name: 'what-now', path: `${JOB}/what-now` },
]

/**
 * @typedef {object} Picture
 * @property {string} name
 * @property {string} path
 * @property {Record<string, string>} [kept] choices that the device has kept
 * @property {string} [drawn] what stands there once it is drawn
 * @property {string} [part] to scroll to
 * @property {string} [zone] to choose there
 * @property {string} [row] of a table, to choose it
 * @property {string} [file] where it is written, if not beside the guide
 * @property {{ width: number, height: number }} size
 */

/** @type {readonly Picture[]} */
export const pictures = [
  ...SHEETS.flatMap((sheet) => SIZES.map((size) => ({ ...sheet, size }))),
  // The first picture of the front page.
  {
    name: 'boat',
    path: `${JOB}/boat`,
    kept: { boat: 'solid', 'boat-finish': 'painted' },
    drawn: '[data-drawn=space]',
    row: 'Topsides starboard',
    file: 'docs/pictures/boat.png',
    size: SIZES[0],
  },
]

/**
 * @param {object} wish
 * @param {import('playwright-core').Browser} wish.browser
 * @param {import('./program.mjs').Program} wish.program
 * @param {Picture} wish.picture
 * @param {string} wish.root
 * @returns {Promise<string>} where it was written
 */
export async function takePicture({ browser, program, picture, root }) {
  const { name, path, kept = {}, drawn = 'main h1', size, part, zone, row } = picture
  const { file = join('docs', 'guide', `${name}-${size.width}.png`) } = picture
  const context = await browser.newContext({
    baseURL: program.origin,
    viewport: size,
    locale: 'en-GB',
    timezoneId: 'Europe/Berlin',
    colorScheme: 'light',
    reducedMotion: 'reduce',
  })
  const page = await context.newPage()
  const keep = Object.entries(kept).map(
    ([key, choice]) => `localStorage.setItem('hardstand.${key}', '${choice}')`,
  )
  await page.addInitScript({ content: keep.join('\n') })
  await page.clock.setFixedTime(new Date(HOUR))
  await page.goto(path)
  await page.locator('main h1').first().waitFor()
  // The stick counts zones as soon as the job has come from the server.
  if (path.startsWith('/job/')) {
    await page.locator('.story-stick-count', { hasText: 'zones' }).first().waitFor({ state: 'attached' })
  }
  await page.locator('main [role=progressbar]').first().waitFor({ state: 'detached' })
  await page.locator(drawn).first().waitFor()
  if (part !== undefined && zone !== undefined) {
    await page.locator(part).locator('select').first().selectOption(zone)
    await page.locator(`${part} .deck-handle`).first().waitFor()
  }
  if (part !== undefined) {
    const there = page.locator(part).first()
    await there.waitFor()
    await there.evaluate((element) => element.scrollIntoView({ block: 'start' }))
  }
  if (row !== undefined) await page.locator('main tr', { hasText: row }).first().click()
  await page.screenshot({ path: join(root, file), animations: 'disabled', caret: 'hide' })
  await context.close()
  return file
}
