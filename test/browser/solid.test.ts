// The boat in space on the sheet Boat: turned by keys, a zone tapped, painted, and drawn still where space cannot be.
import { AxeBuilder } from '@axe-core/playwright'
import type { BrowserContextOptions, Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { type App, describeInBrowser, open } from './support/app.ts'
import { jobPath } from './support/screens.ts'
import { drawnBytes, refuseSpace } from './support/space.ts'

const hands = (page: Page): Locator => page.getByRole('img', { name: labelOf('solid.drawing') })
const said = (page: Page): Locator => page.locator('.solid-said')

async function solidBoat(app: App, options: BrowserContextOptions, without?: 'space'): Promise<Page> {
  const context = await app.device({ reducedMotion: 'reduce', ...options })
  const page = await context.newPage()
  if (without) await page.addInitScript(refuseSpace)
  await open(page, jobPath('boat'))
  await page.getByRole('radio', { name: labelOf('boat.solid') }).check({ force: true })
  await page.locator(without ? '.solid-still' : '.solid-canvas[data-drawn=space]').waitFor()
  return page
}

/** Frames that the page asks for while nothing happens. */
const framesAtRest = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const usual = requestAnimationFrame
    let asked = 0
    window.requestAnimationFrame = (call) => {
      asked += 1
      return usual(call)
    }
    await new Promise((resolve) => setTimeout(resolve, 200))
    window.requestAnimationFrame = usual
    return asked
  })

async function tapAt(page: Page, [x, y]: readonly [number, number]): Promise<void> {
  const { width, height } = (await hands(page).boundingBox())!
  await hands(page).click({ position: { x: x * width, y: y * height } })
}

describeInBrowser('the boat in space', (app) => {
  it('is turned by keys, drawn only then, and says name and area of the zone that is tapped', async () => {
    const page = await solidBoat(app(), { viewport: { width: 1280, height: 1000 } })
    const first = await drawnBytes(page)
    expect(await framesAtRest(page)).toBe(0)
    await hands(page).focus()
    for (const key of ['ArrowLeft', 'ArrowUp', '+']) await page.keyboard.press(key)
    expect(await drawnBytes(page)).not.toBe(first)
    await page.keyboard.press('Home')
    expect(await drawnBytes(page)).toBe(first)
    await page.getByRole('button', { name: labelOf('solid.side'), exact: true }).click()
    await tapAt(page, [0.4, 0.42])
    await said(page)
      .filter({ hasText: /^Topsides starboard \d+\.\d+\s*m²$/ })
      .waitFor()
    const row = page.getByRole('row', { name: /^Topsides starboard/ }).first()
    expect(await row.getAttribute('class')).toContain('selected')
    await page.context().close()
  })

  it('comes nearer by wheel and by two fingers, and is turned by one, while the page stays where it is', async () => {
    const page = await solidBoat(app(), { viewport: { width: 900, height: 900 }, hasTouch: true })
    const { x, y, width, height } = (await hands(page).boundingBox())!
    const [left, right] = [0.4, 0.6].map((share) => ({ x: x + share * width, y: y + height / 2 }))
    const shots = [await drawnBytes(page)]
    const moves = async (move: () => Promise<unknown>): Promise<void> => {
      await move()
      await page.waitForFunction(
        (before) => (document.querySelector('.solid-canvas') as HTMLCanvasElement).toDataURL() !== before,
        shots.at(-1),
      )
      shots.push(await drawnBytes(page))
    }
    await page.mouse.move(left!.x, left!.y)
    await moves(() => page.mouse.wheel(0, -120))
    const fingers = await page.context().newCDPSession(page)
    const touch = (
      type: 'touchStart' | 'touchMove' | 'touchEnd',
      ...touchPoints: readonly { x: number; y: number }[]
    ) =>
      fingers.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: touchPoints.map((at, id) => ({ ...at, id })),
      })
    await touch('touchStart', left!, right!)
    await moves(() => touch('touchMove', { ...left!, x: left!.x - 60 }, { ...right!, x: right!.x + 60 }))
    await touch('touchEnd')
    await touch('touchStart', left!)
    await moves(() => touch('touchMove', { x: left!.x + 80, y: left!.y + 40 }))
    await touch('touchEnd')
    expect(await page.evaluate(() => scrollY)).toBe(0)
    await hands(page).focus()
    await page.keyboard.press('Home')
    expect(await drawnBytes(page)).toBe(shots[0])
    await page.context().close()
  })

  it('is chosen on the device once, and painted in the colour that is written here', async () => {
    const page = await solidBoat(app(), { viewport: { width: 1280, height: 1000 } })
    await page.getByRole('radio', { name: labelOf('boat.painted') }).check({ force: true })
    await page.getByRole('button', { name: labelOf('solid.side'), exact: true }).click()
    await tapAt(page, [0.4, 0.42])
    const box = page.getByLabel(labelOf('cell.sheets.colour'), { exact: true })
    expect(await box.inputValue()).toBe('pale teal')
    const teal = await drawnBytes(page)
    await box.fill('dark red')
    await box.press('Enter')
    await page.waitForFunction(
      (before) => (document.querySelector('.solid-canvas') as HTMLCanvasElement).toDataURL() !== before,
      teal,
    )
    await open(page, jobPath('boat'))
    await page.locator('.solid-canvas[data-drawn=space]').waitFor()
    expect(await page.getByRole('radio', { name: labelOf('boat.painted') }).isChecked()).toBe(true)
    await page.getByRole('radio', { name: labelOf('boat.lines') }).check({ force: true })
    const fills = page.locator('.lines-zone[style*="fill"]')
    expect(await fills.first().evaluate((zone) => getComputedStyle(zone).fill)).toMatch(/^rgb\(/)
    await page.context().close()
  })

  it('is a still drawing of the same name where space is refused, turned and tapped all the same', async () => {
    const page = await solidBoat(app(), { viewport: { width: 360, height: 740 } }, 'space')
    const paths = () =>
      page.locator('.solid-still path').evaluateAll((all) => all.map((one) => one.outerHTML))
    const first = await paths()
    expect(first.length).toBeGreaterThan(8)
    await hands(page).focus()
    await page.keyboard.press('ArrowRight')
    expect(await paths()).not.toEqual(first)
    await page.getByRole('button', { name: labelOf('solid.above'), exact: true }).click()
    await tapAt(page, [0.35, 0.5])
    await said(page)
      .filter({ hasText: /^Cockpit sole/ })
      .waitFor()
    await page.context().close()
  })

  it('becomes a still drawing when space is lost', async () => {
    const page = await solidBoat(app(), { viewport: { width: 900, height: 900 } })
    await page.locator('.solid-canvas').evaluate((canvas) => {
      const context = (canvas as HTMLCanvasElement).getContext('webgl2')
      context?.getExtension('WEBGL_lose_context')?.loseContext()
    })
    await page.locator('.solid-still').waitFor()
    await page.context().close()
  })

  it('can be read by everyone, fits a phone, and has keys that a thumb hits', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const page = await solidBoat(app(), {
        viewport: { width: 360, height: 740 },
        colorScheme,
        hasTouch: true,
      })
      const { violations } = await new AxeBuilder({ page }).setLegacyMode().include('.part-main').analyze()
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target}`)).toEqual([])
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      )
      expect(wide).toBe(0)
      const boxes = await page
        .locator('.solid-controls button')
        .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect))
      expect(boxes).toHaveLength(7)
      for (const { width, height } of boxes) expect(Math.min(width, height)).toBeGreaterThanOrEqual(48)
      await page.context().close()
    }
  })
})
