// The boat in space as warm as she is at an hour: a slider, the hour asked about, a table, and a still drawing without space.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { AxeBuilder } from '@axe-core/playwright'
import type { BrowserContextOptions, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { type App, describeInBrowser, drawn } from './support/app.ts'
import { drawnBytes, refuseSpace } from './support/space.ts'

const sample = (name: string): Buffer =>
  readFileSync(fileURLToPath(new URL(`../../samples/open-powerboat.${name}`, import.meta.url)))

/** The sample, without its cover unless it is asked for, on the sheet Days, with the boat in space opened. */
async function openHeat(
  app: App,
  options: BrowserContextOptions,
  { without, shelter = 'open' }: { readonly without?: 'space'; readonly shelter?: 'open' | 'cover' } = {},
): Promise<Page> {
  const context = await app.device({ reducedMotion: 'reduce', ...options })
  const page = await context.newPage()
  await page.clock.setFixedTime(new Date('2027-07-01T08:00:00Z'))
  if (without) await page.addInitScript(refuseSpace)
  await page.goto('/')
  await page.locator('input[type=file]').setInputFiles([
    {
      ...{ name: 'open-powerboat.yaml', mimeType: 'text/yaml' },
      buffer: Buffer.from(sample('yaml').toString().replace('shelter: cover', `shelter: ${shelter}`)),
    },
    { name: 'open-powerboat.weather.csv', mimeType: 'text/csv', buffer: sample('weather.csv') },
  ])
  await page.waitForURL(/\/job\/[^/]+\/today$/)
  await page.goto(page.url().replace(/today$/, 'days'))
  await drawn(page)
  await page.locator('summary', { hasText: labelOf('daysScreen.heat') }).click()
  await page.locator(without ? '.solid-still' : '.solid-canvas[data-drawn=space]').waitFor()
  await page.locator('.heat table').waitFor()
  return page
}

/** Skin of a side as the table has it, °C. */
async function skinOf(page: Page, place: string): Promise<number> {
  const row = page.locator('.heat').getByRole('row', { name: new RegExp(`^${labelOf(`litPlace.${place}`)}`) })
  return Number.parseFloat((await row.getByRole('cell').nth(1).textContent())!.replace('−', '-'))
}

const slider = (page: Page) => page.locator('.heat input[type=range]')

describeInBrowser('the boat in space at an hour', (app) => {
  it('goes from hour to hour by keys: cold and alike by night, one side in the sun towards evening', async () => {
    const page = await openHeat(app(), { viewport: { width: 1280, height: 1000 } })
    await slider(page).focus()
    await page.keyboard.press('Home')
    for (let hour = 0; hour < 3; hour++) await page.keyboard.press('ArrowRight')
    await page.getByRole('status').or(page.locator('.heat output')).filter({ hasText: '03:00' }).waitFor()
    const night = await drawnBytes(page)
    expect(await skinOf(page, 'deck')).toBeLessThan(await skinOf(page, 'bottom'))
    for (let hour = 0; hour < 15; hour++) await page.keyboard.press('ArrowRight')
    await page.locator('.heat output').filter({ hasText: '18:00' }).waitFor()
    const sides = [await skinOf(page, 'port'), await skinOf(page, 'starboard')] as const
    expect(Math.abs(sides[0] - sides[1])).toBeGreaterThan(1)
    await page.waitForFunction(
      (before) => (document.querySelector('.solid-canvas') as HTMLCanvasElement).toDataURL() !== before,
      night,
    )
    const found = await new AxeBuilder({ page }).include('.heat').analyze()
    expect(found.violations.map(({ id }) => id)).toEqual([])
    await page.context().close()
  })

  it('is told under a cover too, where every upright side is alike', async () => {
    const page = await openHeat(app(), { viewport: { width: 1280, height: 1000 } }, { shelter: 'cover' })
    const light = page.locator('.heat').getByRole('columnheader', { name: labelOf('daysScreen.light') })
    await light.waitFor()
    await slider(page).focus()
    await page.keyboard.press('Home')
    for (let hour = 0; hour < 12; hour++) await page.keyboard.press('ArrowRight')
    expect(await skinOf(page, 'port')).toBe(await skinOf(page, 'starboard'))
    expect(await skinOf(page, 'deck')).not.toBe(await skinOf(page, 'port'))
    await page.context().close()
  })

  it('follows the hour that is asked about in a row', async () => {
    const page = await openHeat(app(), { viewport: { width: 1280, height: 1000 } })
    const strip = page.locator('.days-pick').first()
    await strip.focus()
    await page.keyboard.press('Home')
    await page.keyboard.press('PageDown')
    await page.locator('.heat output').filter({ hasText: '06:00' }).waitFor()
    await page.context().close()
  })

  it('is a still drawing in the same colours where space is refused, on a phone', async () => {
    const page = await openHeat(
      app(),
      { viewport: { width: 360, height: 740 }, hasTouch: true },
      { without: 'space' },
    )
    const fills = await page
      .locator('.solid-still path')
      .evaluateAll((all) => all.map((one) => one.getAttribute('fill') ?? getComputedStyle(one).fill))
    const warm = await page
      .locator('.heat-key rect')
      .evaluateAll((all) => all.map((one) => one.getAttribute('fill')))
    expect(warm).toHaveLength(9)
    expect(new Set(fills.filter((fill) => warm.includes(fill))).size).toBeGreaterThan(1)
    expect((await slider(page).boundingBox())!.height).toBeGreaterThanOrEqual(44)
    await page.context().close()
  })
})
