// Product sheets from a file: taken in one step of undo, and what cannot be read is said with its line.
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { describeInBrowser, open } from './support/app.ts'
import { jobPath } from './support/screens.ts'

const csv = 'section,id,name,like,mix\nsheets,a,"Slow gloss, amber",two-part-finish,2:1\nthinners,t,,,\n'

async function give(page: Page, name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: labelOf('sheetFiles.take') }).click(),
  ])
  await chooser.setFiles([{ name, mimeType: 'text/csv', buffer: Buffer.from(text) }])
}

describeInBrowser('the sheet Build-up', (app) => {
  it('takes product sheets from a file, and undo takes them out again', async () => {
    const device = await app().device()
    const page = await device.newPage()
    await open(page, jobPath('build-up'))
    const line = page.getByRole('button', { name: 'Slow gloss, amber' })
    await give(page, 'mine.csv', csv)
    await line.waitFor()
    await page.getByRole('button', { name: labelOf('frame.undo') }).click()
    await line.waitFor({ state: 'detached' })
    expect(await line.count()).toBe(0)

    await give(page, 'bad.csv', 'id,name\na,"open')
    const fault = page.locator('.sheet-files-fault')
    await fault.waitFor()
    expect(await fault.textContent()).toMatch(/^2: /)
    await device.close()
  })
})
