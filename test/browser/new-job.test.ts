// A new job: twelve answers make a plan, and wrong ones are told where they were given.
import type { BrowserContext, Page } from 'playwright-core'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { labelOf } from '#words'
import { describeInBrowser, drawn, open } from './support/app.ts'

describeInBrowser('a new job', (app) => {
  let context: BrowserContext
  let page: Page
  beforeEach(async () => {
    context = await app().device()
    page = await context.newPage()
    await page.clock.setFixedTime(new Date('2027-04-10T08:00:00Z'))
    await open(page, '/new')
  })
  afterEach(() => context.close())

  const answer = async (key: string, text: string): Promise<void> => {
    await page
      .getByLabel(labelOf(`newjob.${key}`), { exact: true })
      .first()
      .fill(text)
  }
  const make = (): Promise<void> =>
    page
      .getByRole('button', { name: labelOf('newjob.make') })
      .first()
      .click()

  it('is a plan with areas when its questions are answered', async () => {
    await answer('boatName', 'Sandpiper')
    await answer('length', '6.2')
    await answer('beam', '2.3')
    await answer('freeboard', '1')
    await answer('latitude', '54.3')
    await answer('longitude', '-10.1')
    await make()
    await page.waitForURL(/\/job\/[^/]+\/open$/)
    await page.locator('.story-stick a[href$="/boat"]').click()
    await drawn(page)
    await page.waitForFunction(() => /\d\s*m²/.test(document.querySelector('main h1')?.textContent ?? ''))
    expect(await page.locator('main table').first().textContent()).toMatch(/\d\s*m²/)
    expect(await page.locator('main svg').count()).toBeGreaterThan(0)
  })

  it('tells a wrong answer at its field, and makes nothing of it', async () => {
    await answer('boatName', 'Sandpiper')
    await answer('length', 'six and a bit')
    await answer('freeboard', '3 ft 4 in')
    await make()
    expect(await wrongLabels(page)).toEqual([labelOf('newjob.length'), labelOf('newjob.beam')])
    expect(new URL(page.url()).pathname).toBe('/new')
    await answer('length', '6.2')
    await answer('beam', '2.3')
    await make()
    await page.waitForURL(/\/job\/[^/]+\/open$/)
  })
})

async function wrongLabels(page: Page): Promise<readonly string[]> {
  await page.locator('.field-wrong').first().waitFor()
  return page.locator('.field-wrong .field-label').allInnerTexts()
}
