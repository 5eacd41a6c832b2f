// One change moves the figures at once, goes back by the key, and reaches another device.
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { describeInBrowser, drawn, open } from './support/app.ts'
import { beamBox, onServer, setBeam, titleOf, titleOtherThan } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

describeInBrowser('the sheet Boat', (app) => {
  it('moves areas and litres with the beam, and undo and redo bring both back', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await open(page, jobPath('boat'))
    const first = await titleOf(page)
    const beam = await beamBox(page).inputValue()
    expect(figuresIn(first)).toHaveLength(2)

    await setBeam(page, '3.4 m')
    const wide = await titleOtherThan(page, first)
    const [area, litres] = figuresIn(first)
    const [wideArea, wideLitres] = figuresIn(wide)
    expect(wideArea).not.toBe(area)
    expect(wideLitres).not.toBe(litres)

    await leaveBoxes(page)
    await page.keyboard.press('Control+z')
    expect(await titleOtherThan(page, wide)).toBe(first)
    expect(await beamBox(page).inputValue()).toBe(beam)
    await page.keyboard.press('Control+Shift+z')
    expect(await titleOtherThan(page, first)).toBe(wide)
    await page.keyboard.press('Control+z')
    await titleOtherThan(page, wide)
    await context.close()
  })

  it('shows two devices the edits of each other', async () => {
    const [one, two] = [await app().device(), await app().device()]
    const [here, there] = [await one.newPage(), await two.newPage()]
    await open(here, jobPath('boat'))
    await open(there, jobPath('boat'))
    await onServer(there)
    const first = await titleOf(there)
    await setBeam(here, '2.75 m')
    const second = await titleOtherThan(there, first)
    await there.waitForFunction((label) => label === document.querySelector('main h1')?.textContent, second)
    expect(await beamBox(there).inputValue()).toBe('2.75 m')
    await setBeam(there, '2.45 m')
    await titleOtherThan(here, second)
    await drawn(here)
    expect(await beamBox(here).inputValue()).toBe('2.45 m')
    await one.close()
    await two.close()
  })
})

const leaveBoxes = (page: Page): Promise<void> =>
  page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())

/** Area and litres of the opening sentence. */
const figuresIn = (title: string): readonly number[] =>
  [...title.matchAll(/(\d+(?:\.\d+)?)\s*(?:m²|litres|L)/g)].map((match) => Number(match[1]))
