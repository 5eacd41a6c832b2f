// A figure of the plan by keyboard: how it came about, read by everyone, and the way to the cell that would firm it up.
import { AxeBuilder } from '@axe-core/playwright'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { describeInBrowser, open } from './support/app.ts'
import { jobPath } from './support/screens.ts'

describeInBrowser('a figure', (app) => {
  it('opens with Enter, says its formula and parts, and gives the focus back', async () => {
    const context = await app().device({ viewport: { width: 360, height: 740 }, reducedMotion: 'reduce' })
    const page = await context.newPage()
    await open(page, jobPath('stores'))
    const figure = page.locator('.figure-open').first()
    await figure.focus()
    await page.keyboard.press('Enter')
    const panel = page.getByRole('dialog')
    await panel.getByText(labelOf('screenPart.formula'), { exact: true }).waitFor()
    expect(await panel.locator('.figure-panel-parts li').count()).toBeGreaterThan(1)
    expect(await panel.textContent()).toMatch(/m² × \d/)
    const { violations } = await new AxeBuilder({ page }).setLegacyMode().include('.figure-panel').analyze()
    expect(violations.map(({ id }) => id)).toEqual([])
    await page.keyboard.press('Escape')
    await panel.waitFor({ state: 'detached' })
    expect(await figure.evaluate((element) => element === document.activeElement)).toBe(true)
    await context.close()
  })

  it('leads from a guess to the box in which it is set', async () => {
    const context = await app().device({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' })
    const page = await context.newPage()
    await open(page, jobPath('stores'))
    await page.locator('.figure-open').first().click()
    const label = labelOf('wayPart.solids')
    await page.getByRole('dialog').getByRole('link', { name: label }).first().click()
    const box = page.getByLabel(labelOf('cell.sheets.volumeSolids'), { exact: true })
    await box.waitFor()
    await page.waitForFunction(() => document.activeElement?.tagName === 'INPUT')
    expect(await box.evaluate((element) => element === document.activeElement)).toBe(true)
    expect(new URL(page.url()).pathname).toBe(jobPath('build-up'))
    expect(new URL(page.url()).search).toBe('')
    await context.close()
  })

  it('keeps how a section is drawn on the device', async () => {
    const context = await app().device({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' })
    const page = await context.newPage()
    await open(page, jobPath('build-up'))
    await page.getByRole('radio', { name: labelOf('buildUp.trueScale') }).check()
    await open(page, jobPath('build-up'))
    expect(await page.getByRole('radio', { name: labelOf('buildUp.trueScale') }).isChecked()).toBe(true)
    await context.close()
  })
})
