// The sheet Boat as its tests use it: the box of the beam, the opening sentence, and where edits are kept.
import type { Locator, Page } from 'playwright-core'
import { labelOf } from '#words'

export const beamBox = (page: Page): Locator =>
  page.getByLabel(labelOf('cell.boat.beam'), { exact: true }).first()

export async function setBeam(page: Page, text: string): Promise<void> {
  await beamBox(page).fill(text)
  await beamBox(page).press('Enter')
}

export const titleOf = async (page: Page): Promise<string> =>
  (await page.locator('main h1').textContent()) ?? ''

/** The opening sentence, once it says something else. */
export async function titleOtherThan(page: Page, before: string): Promise<string> {
  await page.waitForFunction(
    (text) => (document.querySelector('main h1')?.textContent ?? text) !== text,
    before,
  )
  return titleOf(page)
}

/** The mark in sight says that the server has everything. */
export const onServer = (page: Page): Promise<void> => keptIs(page, 'both')

export const keptIs = (page: Page, where: 'device' | 'both'): Promise<void> =>
  page
    .locator('.kept-mark:visible')
    .filter({ hasText: labelOf(`keptMark.${where}`) })
    .first()
    .waitFor()
