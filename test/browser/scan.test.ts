// A scan that is dropped on the sheet Boat becomes the hull in one step of undo; garbage and giving up change nothing.
import type { Locator, Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { parabolicHull } from '../support/hull-meshes.mjs'
import { describeInBrowser, open } from './support/app.ts'
import { titleOf, titleOtherThan } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

/** The parabolic hull of 7.5 m with 0.6 m of topsides, in millimetres, as a text of STL. */
function stlText(): string {
  const steps = { along: 60, up: 10, upAbove: 8 }
  const { positions, triangles } = parabolicHull({ length: 7.5, topsides: 0.6, joined: true, ...steps })
  const corner = (p: number): string =>
    `vertex ${[0, 1, 2].map((k) => (1000 * positions[3 * p + k]!).toFixed(2)).join(' ')}`
  const lines = ['solid hull']
  for (let t = 0; t < triangles.length; t += 3)
    lines.push(
      'facet normal 0 0 0',
      'outer loop',
      ...[0, 1, 2].map((k) => corner(triangles[t + k]!)),
      'endloop',
      'endfacet',
    )
  return [...lines, 'endsolid hull', ''].join('\n')
}

async function drop(page: Page, name: string, content: string): Promise<void> {
  const files = await page.evaluateHandle(
    (given) => {
      const data = new DataTransfer()
      data.items.add(new File([given.content], given.name))
      return data
    },
    { name, content },
  )
  const part = page.locator('.jobs-drop', { has: page.getByRole('button', { name: labelOf('scan.choose') }) })
  await part.dispatchEvent('drop', { dataTransfer: files })
}

const dialog = (page: Page): Locator => page.locator('dialog[open]')

/** A mark, set with keys alone; metres from the aftmost point, to port, and over the lowest point. */
async function typeMark(page: Page, mark: string, at: readonly [string, string, string]): Promise<void> {
  await dialog(page)
    .getByRole('button', { name: labelOf(`scanMark.${mark}`) })
    .press('Enter')
  for (const [axis, text] of [
    ['x', at[0]],
    ['y', at[1]],
    ['z', at[2]],
  ] as const) {
    const box = dialog(page).getByLabel(labelOf(`scanAxis.${axis}`), { exact: true })
    await box.fill(text)
    await box.press('Enter')
  }
}

const stationCount = (page: Page): Promise<number> =>
  page.evaluate(
    (name) =>
      [...document.querySelectorAll('main summary, main button')].filter((each) =>
        each.textContent?.trim().startsWith(name),
      ).length,
    `${labelOf('cell.stations.name')} `,
  )

describeInBrowser('a scan on the sheet Boat', (app) => {
  it('becomes the hull by typed marks, and undo brings the hull before back in one step', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await open(page, jobPath('boat'))
    const before = await titleOf(page)
    const stations = await stationCount(page)
    await drop(page, 'hull.stl', stlText())
    await dialog(page).getByText(labelOf('scan.side')).waitFor()
    await typeMark(page, 'stemWater', ['7.5 m', '0 m', '0.469 m'])
    await typeMark(page, 'portWater', ['1.5 m', '0.24 m', '0.469 m'])
    await typeMark(page, 'starboardWater', ['1.5 m', '-0.24 m', '0.469 m'])
    await dialog(page).getByLabel(labelOf('scan.check')).selectOption('none')
    await dialog(page)
      .getByRole('button', { name: labelOf('scan.work') })
      .click()
    await dialog(page)
      .getByRole('button', { name: labelOf('scan.take') })
      .click()
    const after = await titleOtherThan(page, before)
    expect(after).not.toBe(before)
    await page.getByText('hull.stl').first().waitFor()
    expect(await stationCount(page)).toBe(21)
    expect(stations).not.toBe(21)
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
    await page.keyboard.press('Control+z')
    expect(await titleOtherThan(page, after)).toBe(before)
    expect(await stationCount(page)).toBe(stations)
    await context.close()
  })

  it('takes marks by touch, one after the other, even where two lie over one another', async () => {
    const context = await app().device({ viewport: { width: 360, height: 800 }, hasTouch: true })
    const page = await context.newPage()
    await open(page, jobPath('boat'))
    await drop(page, 'hull.stl', stlText())
    const side = dialog(page).locator('svg[data-view="side"]')
    await side.waitFor()
    const { width, height } = (await side.boundingBox())!
    for (const [mark, share] of [
      ['stemWater', 0.97],
      ['portWater', 0.2],
      ['starboardWater', 0.2],
    ] as const) {
      const row = dialog(page).getByRole('button', { name: labelOf(`scanMark.${mark}`) })
      expect(await row.getAttribute('aria-pressed')).toBe('true')
      await side.tap({ position: { x: 28 + (width - 56) * share, y: height / 2 } })
      await row.getByText(labelOf('scan.notSet')).waitFor({ state: 'detached' })
    }
    const wide = await dialog(page).evaluate((each) => each.scrollWidth - each.clientWidth)
    expect(wide).toBe(0)
    await context.close()
  })

  it('leaves all as it was when it is garbage, and when it is given up', async () => {
    const context = await app().device()
    const page = await context.newPage()
    await open(page, jobPath('boat'))
    const before = await titleOf(page)
    const stations = await stationCount(page)
    await drop(page, 'hull.stl', 'solid nothing of the kind')
    const alert = dialog(page).getByRole('alert')
    await alert.waitFor()
    expect(await alert.textContent()).toContain('This is no 3D scan')
    await dialog(page)
      .getByRole('button', { name: labelOf('scan.close') })
      .click()

    await drop(page, 'hull.stl', stlText())
    await dialog(page).getByText(labelOf('scan.side')).waitFor()
    await dialog(page)
      .locator('svg[data-view="side"]')
      .click({ position: { x: 60, y: 60 } })
    await dialog(page)
      .getByRole('button', { name: labelOf('scan.work') })
      .click()
    expect(await dialog(page).getByRole('alert').textContent()).toMatch(/3 marks/)
    await dialog(page)
      .getByRole('button', { name: labelOf('scan.cancel') })
      .click()
    await dialog(page).waitFor({ state: 'detached' })
    expect(await titleOf(page)).toBe(before)
    expect(await stationCount(page)).toBe(stations)
    await context.close()
  })
})
