// What the browser prints: a day on one page, no box cut in two by the end of one, and the title block on each.
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { describeInBrowser, open } from './support/app.ts'
import { jobPath } from './support/screens.ts'

/** Pages of a printed sheet: each has one entry in the file. */
const pagesOf = async (page: Page): Promise<number> => {
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true })
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0
}

describeInBrowser('on paper', (app) => {
  it('today is one page', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await page.clock.setFixedTime(new Date('2027-04-14T08:00:00Z'))
    await open(page, jobPath('today'))
    expect(await pagesOf(page)).toBe(1)
    await context.close()
  })

  it('no box, note or drawing is cut by the end of a page', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await page.emulateMedia({ media: 'print' })
    for (const room of ['boat', 'survey', 'marks']) {
      await open(page, jobPath(room))
      const cut = await page.evaluate(() =>
        [
          ...document.querySelectorAll(
            'main :is(.field, .caution-panel, .collection-line, .note-list-line, svg)',
          ),
        ]
          .filter((box) => getComputedStyle(box).breakInside !== 'avoid')
          .map((box) => box.outerHTML.slice(0, 80)),
      )
      expect(cut, room).toEqual([])
    }
    await context.close()
  })

  it('the week has its title block, on one line', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await page.clock.setFixedTime(new Date('2027-04-14T08:00:00Z'))
    await page.setViewportSize({ width: 1010, height: 700 })
    await open(page, jobPath('days'))
    await page.emulateMedia({ media: 'print' })
    const { width, height } = (await page.locator('main .title-block').boundingBox())!
    expect(width).toBeGreaterThan(600)
    expect(height).toBeLessThan(56)
    await context.close()
  })
})
