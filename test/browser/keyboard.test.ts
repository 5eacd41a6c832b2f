// Keys alone: Tab reaches the rooms and the figures; Enter opens a figure, Escape closes it and gives the place back.
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { describeInBrowser, drawn, open } from './support/app.ts'
import { jobPath } from './support/screens.ts'

const mostTabs = 60

describeInBrowser('keys alone', (app) => {
  it('go to a room of the stick', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await open(page, jobPath('boat'))
    await tabTo(page, `.story-stick a[href="${jobPath('stores')}"]`)
    await page.keyboard.press('Enter')
    await page.waitForURL(`**${jobPath('stores')}`)
    await drawn(page)
    await context.close()
  })

  it('open a figure and come back to it', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await open(page, jobPath('boat'))
    await tabTo(page, '.figure-open')
    await page.keyboard.press('Enter')
    await page.locator('dialog[open]').waitFor()
    expect(await page.evaluate(() => document.activeElement?.closest('dialog') !== null)).toBe(true)
    await page.keyboard.press('Escape')
    await page.locator('dialog[open]').waitFor({ state: 'detached' })
    await page.waitForFunction(() => document.activeElement?.matches('.figure-open'))
    await context.close()
  })
})

async function tabTo(page: Page, selector: string): Promise<void> {
  for (let tabs = 0; tabs < mostTabs; tabs += 1) {
    await page.keyboard.press('Tab')
    if (await page.evaluate((place) => document.activeElement?.matches(place) === true, selector)) return
  }
  throw new Error(`keyboard: ${selector} not reached, got ${mostTabs} presses of Tab, expected fewer`)
}
