// The sheet Today and What now on a phone: one job caught up, a coat in hand with its cautions, a reading, a mishap.
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { mishaps } from '#catalogue'
import { labelOf } from '#words'
import { describeInBrowser, open } from './support/app.ts'

const JOB = '/job/open-powerboat'
/** A day of gloss on the sample boat, as in the guide. */
const HOUR = '2027-06-09T06:30:00Z'
const phone = { viewport: { width: 360, height: 740 } }
/** What the story stick along the bottom leaves of the first screen. */
const FIRST_SCREEN = 740 - 68

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name })
const endOf = (page: Page, selector: string): Promise<number> =>
  page
    .locator(selector)
    .first()
    .evaluate((element) => element.getBoundingClientRect().bottom + window.scrollY)

describeInBrowser('Today on a phone', (app) => {
  it('catches up in one go, folds what was read, and says dew while a reading is typed', async () => {
    const context = await app().device(phone)
    const page = await context.newPage()
    await page.clock.setFixedTime(new Date(HOUR))
    await open(page, `${JOB}/today`)

    await button(page, labelOf('today.upToHere')).click()
    const rows = page.locator('.catch-up-row')
    await rows.first().waitFor()
    const behind = await rows.count()
    expect(behind).toBeGreaterThan(30)
    await button(page, `Write ${behind} as done`).click()
    await page.locator('.pot').waitFor()
    // The plans on the way to the last entry had other steps in hand.
    await open(page, `${JOB}/today`)
    await page.locator('.pot').waitFor()

    const mixed = '.pot .button'
    const before = await endOf(page, mixed)
    for (const read = button(page, /^Read/); (await read.count()) > 0; ) await read.first().click()
    const after = await endOf(page, mixed)
    expect(before - after).toBeGreaterThan(800)
    expect(after).toBeLessThan(1200)
    await page.reload()
    await page.locator('.pot').waitFor()
    expect(await button(page, /^Read/).count()).toBe(0)

    await button(page, labelOf('today.reading')).click()
    const dialog = page.locator('dialog')
    for (const [key, text] of [
      ['air', '16'],
      ['humidity', '71'],
      ['skin', '13'],
    ] as const)
      await dialog.getByLabel(labelOf(`today.${key}`), { exact: true }).fill(text)
    expect((await dialog.textContent())?.replaceAll('\u2009', ' ')).toMatch(/10\.7 °C.*2\.3 °C.*Do not coat/s)
    await button(page, labelOf('today.keep')).click()
    await open(page, `${JOB}/log`)
    const log = (await page.locator('main').textContent())?.replaceAll('\u2009', ' ')
    expect(log).toContain('Air 16 °C, humidity 71 %, skin 13 °C, dew 10.7 °C')
    expect(log).toContain('written Wed, 9 Jun 2027')
    await context.close()
  })

  it('shows what to do first, whatever went wrong, on the first screen', async () => {
    const context = await app().device(phone)
    const page = await context.newPage()
    for (const id of Object.keys(mishaps)) {
      await open(page, `${JOB}/what-now/${id}`)
      await page.locator('.what-now-steps li').first().waitFor()
      expect(await endOf(page, '.what-now-steps li'), id).toBeLessThan(FIRST_SCREEN)
    }
    await context.close()
  }, 120_000)
})
