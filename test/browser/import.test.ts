// A job from files, by the button with keys alone and by dropping, and out again as files that plan the same.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { BrowserContext, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { describeInBrowser, drawn } from './support/app.ts'
import { onServer, titleOf } from './support/boat.ts'

const sample = (name: string): string => fileURLToPath(new URL(`../../samples/${name}`, import.meta.url))
const [job, weather] = [sample('deck-only.yaml'), sample('deck-only.weather.csv')]

/** From now on the page asks this test for files; asked for only when it is needed, a first key would be too early. */
async function listOf(device: BrowserContext): Promise<Page> {
  const page = await device.newPage()
  page.on('filechooser', () => {})
  await page.goto('/')
  await page.getByRole('button', { name: labelOf('import.pick') }).waitFor()
  return page
}

async function pick(page: Page, files: readonly string[]): Promise<void> {
  await page.getByRole('button', { name: labelOf('import.pick') }).focus()
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.keyboard.press('Enter')])
  await chooser.setFiles([...files])
}

/** What Days says of the job that stands open, once it is planned with its weather. */
async function daysOf(page: Page): Promise<string> {
  await page.waitForURL(/\/job\/[^/]+\/today$/)
  await page.goto(page.url().replace(/today$/, 'days'))
  await page.locator('.story-stick-count', { hasText: 'days' }).first().waitFor({ state: 'attached' })
  await drawn(page)
  return titleOf(page)
}

describeInBrowser('the list of jobs', (app) => {
  it('takes a job and its weather, and what is saved of it plans the same when it is brought back', async () => {
    const device = await app().device()
    const page = await listOf(device)
    await pick(page, [job])
    await page.getByText('deck-only.weather.csv').waitFor()
    await pick(page, [job, weather])
    const first = await daysOf(page)
    expect(first).toMatch(/\d/)
    await onServer(page)

    await page.goto(page.url().replace(/days$/, 'papers'))
    await drawn(page)
    await page.getByRole('button', { name: labelOf('papers.save') }).click()
    const links = page.locator('.papers-made a[download]')
    await links.nth(1).waitFor()
    const saved: string[] = []
    for (const link of await links.all()) {
      const [download] = await Promise.all([page.waitForEvent('download'), link.click()])
      const path = `${await download.path()}-${download.suggestedFilename()}`
      await download.saveAs(path)
      saved.push(path)
    }
    const elsewhere = await app().device()
    const there = await listOf(elsewhere)
    await pick(there, saved)
    expect(await daysOf(there)).toBe(first)
    await Promise.all([device.close(), elsewhere.close()])
  })

  it('says of a bad file that is dropped where it is bad, and keeps nothing of it', async () => {
    const device = await app().device()
    const page = await listOf(device)
    const text = readFileSync(job, 'utf8').replace('beam:', 'baem:')
    const line = text.split('\n').findIndex((row) => row.includes('baem:')) + 1
    const files = await page.evaluateHandle((content) => {
      const data = new DataTransfer()
      data.items.add(new File([content], 'mine.yaml'))
      return data
    }, text)
    await page.locator('.jobs-drop').dispatchEvent('drop', { dataTransfer: files })
    const alert = page.getByRole('alert')
    await alert.waitFor()
    expect(await alert.textContent()).toContain(`mine.yaml:${line}:`)
    expect(new URL(page.url()).pathname).toBe('/')
    await device.close()
  })
})
