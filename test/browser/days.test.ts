// Days: rain is told with a thumb and without a signal, an hour says why it is as it is, and the week goes on paper.
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { describeInBrowser, drawn, open } from './support/app.ts'
import { setBeam, titleOf, titleOtherThan } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

/** A day of coats on the sample boat. */
const hour = new Date('2027-07-01T08:00:00Z')
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true }

async function openDays(page: Page): Promise<void> {
  await page.clock.setFixedTime(hour)
  await open(page, jobPath('days'))
}

const button = (page: Page, label: string) => page.getByRole('button', { name: labelOf(label), exact: true })

describeInBrowser('the sheet Days', (app) => {
  it('takes rain without a signal, and says what came of it', async () => {
    const context = await app().device(phone)
    const page = await context.newPage()
    await openDays(page)
    await context.setOffline(true)
    await button(page, 'daysScreen.itRained').tap()
    await page.getByLabel(labelOf('daysScreen.rainAmount'), { exact: true }).fill('a lot')
    expect(await button(page, 'daysScreen.planAgain').isDisabled()).toBe(true)
    await page.getByLabel(labelOf('daysScreen.rainAmount'), { exact: true }).fill('4 mm')
    await button(page, 'daysScreen.planAgain').tap()
    const status = page.getByRole('status').filter({ hasText: /\./ })
    await status.first().waitFor()
    // A cover stands over the sample boat: rain alone moves nothing, and the sheet says so.
    expect(await status.first().textContent()).toContain('The rain stands in the log')
    await context.setOffline(false)
    await context.close()
  })

  it('says what an edit moved, after a reload too', async () => {
    const context = await app().device({ viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    await page.clock.setFixedTime(hour)
    await open(page, jobPath('boat'))
    const first = await titleOf(page)
    await setBeam(page, '3.4 m')
    await titleOtherThan(page, first)
    await page.evaluate((to) => history.pushState(null, '', to), jobPath('days'))
    await drawn(page)
    const moved = page
      .locator('.part', { hasText: labelOf('daysScreen.changed') })
      .locator('.moved-plan')
      .first()
    await moved.waitFor()
    const said = await moved.textContent()
    await page.reload()
    await drawn(page)
    await moved.waitFor()
    expect(await moved.textContent()).toBe(said)
    await context.close()
  })

  it('says by keys why an hour is as it is, and by a tap on a phone', async () => {
    const desk = await app().device({ viewport: { width: 1280, height: 900 } })
    const page = await desk.newPage()
    await openDays(page)
    const strip = page.getByRole('slider', { name: /hours|h/ }).nth(1)
    await strip.focus()
    await page.keyboard.press('Home')
    await page.keyboard.press('ArrowRight')
    const name = page.locator('.days-why-name')
    await name.waitFor()
    expect(await name.textContent()).toContain('01:00')
    await page.keyboard.press('ArrowRight')
    expect(await name.textContent()).toContain('02:00')
    await desk.close()

    const shed = await app().device(phone)
    const small = await shed.newPage()
    await openDays(small)
    await small.locator('.days-upright-name').first().tap()
    await small.getByRole('dialog', { name: labelOf('daysScreen.why') }).waitFor()
    await button(small, 'daysScreen.close').tap()
    await small.locator('.days-pick').first().tap()
    await small.getByRole('dialog').locator('.days-why-name').waitFor()
    await shed.close()
  })

  it('says first when a zone can take a coat, and shows every figure that an hour is judged by', async () => {
    const context = await app().device({ viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    await openDays(page)
    const next = page.locator('.days-next li').first()
    await next.filter({ hasText: /the dew margin closes at/ }).waitFor()
    await page.locator('.days-sun[aria-label*="W/m²"]').waitFor()
    const strip = page.getByRole('slider', { name: /hours|h/ }).nth(1)
    await strip.focus()
    await page.keyboard.press('Home')
    await page.keyboard.press('ArrowRight')
    const figures = page.locator('.days-figures')
    await figures.locator('dt', { hasText: labelOf('daysScreen.sun') }).waitFor()
    const value = async (label: string): Promise<number> => {
      const row = figures.locator('div', { has: page.getByText(labelOf(label), { exact: true }) })
      return Number.parseFloat((await row.locator('dd').textContent())!.replace('−', '-'))
    }
    const [skin, dew] = [await value('daysScreen.skinColumn'), await value('daysScreen.dewPoint')]
    expect(Math.abs(skin - dew - (await value('daysScreen.dewLimit')))).toBeLessThan(0.11)
    // At one in the night the skin is too near the dew point: by how much stands in its row.
    const row = page.locator('.days-why').getByRole('row', { name: /^Skin over dew/ })
    expect(await row.textContent()).toMatch(/at least 3\s.C.*\d\s.C/)
    expect(await page.locator('.days-asked').count()).toBe(1)
    await context.close()
  })

  it('says where the weather is from, on what terms, and how far it reaches', async () => {
    const context = await app().device(phone)
    const page = await context.newPage()
    await openDays(page)
    const source = page.locator('.weather-source')
    await source.waitFor()
    // The curves stand beside the hours of the zone here too.
    expect(await page.getByRole('img', { name: /^Air .* dew .* skin / }).count()).toBe(1)
    const said = (await source.textContent()) ?? ''
    for (const part of ['free to copy with the program', '2400 hours', labelOf('sunFrom.parted')])
      expect(said).toContain(part)
    await context.close()
  })

  it('puts the week on paper that lies, on A4 and Letter, without buttons and stick', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await openDays(page)
    await page.emulateMedia({ media: 'print' })
    await drawn(page)
    await page.locator('.days-paper').waitFor()
    expect(await page.locator('main button:visible:not(.days-bar)').count()).toBe(0)
    expect(await page.locator('.story-stick:visible').count()).toBe(0)
    expect(await page.locator('.title-block:visible').count()).toBe(1)
    expect(await page.locator('.days-paper .days-wind').count()).toBe(1)
    expect(await leastPoints(page)).toBeGreaterThan(7.9)
    for (const [format, wide, high] of [
      ['A4', 842, 595],
      ['Letter', 792, 612],
    ] as const) {
      const boxes = boxesOf(await page.pdf({ format, printBackground: false }))
      expect(boxes.length).toBeGreaterThan(1)
      for (const [width, height] of boxes) {
        expect(Math.abs(width - wide)).toBeLessThan(2)
        expect(Math.abs(height - high)).toBeLessThan(2)
      }
    }
    await context.close()
  })
})

/** The smallest letters of the drawing as they are printed: 96 px are 72 points. */
const leastPoints = (page: Page): Promise<number> =>
  page.locator('.days-paper-drawing').evaluate((drawing) => {
    const zoom = Number(getComputedStyle(drawing).zoom)
    const own = [...drawing.querySelectorAll('*')].filter(
      (one) =>
        !one.classList.contains('unseen') &&
        [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim() !== '') &&
        one.getClientRects().length > 0,
    )
    return Math.min(...own.map((one) => Number.parseFloat(getComputedStyle(one).fontSize) * zoom * 0.75))
  })

/** Width and height of every page, points. */
const boxesOf = (pdf: Buffer): readonly (readonly [number, number])[] =>
  [...pdf.toString('latin1').matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
    ([, width, height]) => [Number(width), Number(height)] as const,
  )
