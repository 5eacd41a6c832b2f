// The deck plan: a zone is drawn, its corners are dragged, pressed and typed, and area and litres follow.
import { AxeBuilder } from '@axe-core/playwright'
import type { Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { describeInBrowser, open } from './support/app.ts'
import { jobPath } from './support/screens.ts'

const figures = (page: Page): Locator => page.locator('.deck-figures')
/** Looks again and again, for a machine that does other work beside. */
const until = <T>(look: () => Promise<T>) => expect.poll(look, { timeout: 20_000 })

const handles = (page: Page): Locator => page.locator('.deck-handle')

/** Area in m² and paint in litres of the zone in hand. */
const readFigures = (page: Page): Promise<readonly number[]> =>
  figures(page)
    .locator('dd')
    .evaluateAll((all) =>
      all.map((each) => {
        const text = [...each.querySelectorAll('.figure-text')].at(-1)?.textContent ?? ''
        return Number.parseFloat(text) * (/ml/.test(text) ? 0.001 : 1)
      }),
    )

/** Once the area reads something else than before. */
async function movedFrom(page: Page, area: number): Promise<readonly number[]> {
  await page.waitForFunction((was) => {
    const shown = document.querySelectorAll('.deck-figures div:first-child dd .figure-text')
    return Number.parseFloat([...shown].at(-1)?.textContent ?? String(was)) !== was
  }, area)
  return readFigures(page)
}

/** Each test has a zone of its own, since they share the server. */
async function drawZone(page: Page, zone: string): Promise<void> {
  await open(page, jobPath('boat'))
  await page.getByLabel(labelOf('deckplan.which')).selectOption({ label: zone })
  const [before] = await readFigures(page)
  await page.getByRole('button', { name: labelOf('deckplan.draw') }).click()
  await handles(page).first().waitFor()
  // The others begin with the size that was typed in.
  if (zone === 'Foredeck') await movedFrom(page, before!)
}

const boxesOf = (page: Page, corner: number): Locator =>
  page
    .locator('.deck-row')
    .nth(corner - 1)
    .locator('input')

const back = async (page: Page): Promise<void> => {
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
  await page.keyboard.press('Control+z')
}

describeInBrowser('the deck plan', (app) => {
  it('is changed by dragging a corner: area and litres follow, and one undo brings them back', async () => {
    const context = await app().device({ viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    await drawZone(page, 'Foredeck')
    const { violations } = await new AxeBuilder({ page }).setLegacyMode().include('#deck-plan').analyze()
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target}`)).toEqual([])
    const [area, , litres] = await readFigures(page)
    const corner = handles(page).nth(1)
    await corner.scrollIntoViewIfNeeded()
    const box = (await corner.boundingBox())!
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x + 10, y + 30, { steps: 4 })
    await page.mouse.move(x + 10, y + 60, { steps: 4 })
    await page.mouse.up()
    const [less, , lessLitres] = await movedFrom(page, area!)
    expect(less).toBeLessThan(area!)
    expect(lessLitres).toBeLessThan(litres!)
    // Paint goes with the area: both are read to three figures.
    expect(lessLitres! / litres!).toBeCloseTo(less! / area!, 1)
    expect(await boxesOf(page, 2).first().inputValue()).toMatch(/^about /)
    await back(page)
    expect((await movedFrom(page, less!))[0]).toBe(area)

    // What would make the area surer is the tape at its corners: the figure leads to their boxes.
    await figures(page).getByRole('button').first().click()
    await page.locator('.firm-up-link').first().click()
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.closest('.deck-row') !== null))
      .toBe(true)
    await context.close()
  })

  it('is changed by the arrow keys, 10 mm a press and 1 mm with Alt, and by typing a figure', async () => {
    const context = await app().device({ viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    await drawZone(page, 'Cockpit sole')
    const along = boxesOf(page, 2).first()
    const metres = async (): Promise<number> =>
      Number.parseFloat((await along.inputValue()).replace('about ', ''))
    const first = await metres()
    await handles(page).nth(1).focus()
    await page.keyboard.press('ArrowRight')
    await until(metres).toBeCloseTo(first + 0.01, 6)
    await page.keyboard.press('Alt+ArrowLeft')
    await until(metres).toBeCloseTo(first + 0.009, 6)
    const [area] = await readFigures(page)
    const out = boxesOf(page, 1).nth(1)
    await out.fill('0.30 m')
    await out.press('Enter')
    // Both halves lose a triangle of half a metre by three.
    await until(async () => (await readFigures(page))[0]!).toBeLessThan(area! - 1)

    // A corner on the far side of the others makes the edge cross: said beside its boxes, and seen.
    await along.fill('0.1 m')
    await along.press('Enter')
    await boxesOf(page, 2).nth(1).fill('0.05 m')
    await boxesOf(page, 2).nth(1).press('Enter')
    await page.locator('.deck-notes').getByText('crosses itself').waitFor()
    expect(await page.locator('.deck-wrong').count()).toBe(1)
    await context.close()
  })

  it('gets corners, loses them and gets an opening, which all go back', async () => {
    const context = await app().device({ viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    await drawZone(page, 'Steering console')
    const count = await handles(page).count()
    const [area] = await readFigures(page)
    await page.getByRole('button', { name: labelOf('deckplan.addOpening') }).click()
    await until(() => handles(page).count()).toBe(count + 4)
    const [less] = await movedFrom(page, area!)
    expect(less).toBeLessThan(area!)
    await handles(page).nth(0).focus()
    await page.keyboard.press('Insert')
    await until(() => handles(page).count()).toBe(count + 5)
    await handles(page).nth(0).focus()
    await page.keyboard.press('Delete')
    await until(() => handles(page).count()).toBe(count + 4)
    for (const had of [count + 5, count + 4, count]) {
      await back(page)
      await until(() => handles(page).count()).toBe(had)
    }
    await context.close()
  })

  it('has corners on a phone that a gloved finger can hit, and moves them by touch', async () => {
    const context = await app().device({ viewport: { width: 360, height: 740 }, hasTouch: true })
    const page = await context.newPage()
    await drawZone(page, 'Side decks')
    for (const one of await handles(page).all()) {
      const { width, height } = (await one.boundingBox())!
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(48)
    }
    const [area] = await readFigures(page)
    const corner = handles(page).nth(1)
    await corner.evaluate((element) => element.scrollIntoView({ block: 'center' }))
    const box = (await corner.boundingBox())!
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    const touch = await context.newCDPSession(page)
    const send = (
      type: 'touchStart' | 'touchMove' | 'touchEnd',
      points: readonly (readonly [number, number])[],
    ) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: points.map(([px, py]) => ({ x: px, y: py })),
      })
    await send('touchStart', [[x, y]])
    for (const by of [4, 8, 12]) await send('touchMove', [[x + by, y]])
    await send('touchEnd', [])
    expect((await movedFrom(page, area!))[0]).toBeLessThan(area!)
    await context.close()
  })
})
