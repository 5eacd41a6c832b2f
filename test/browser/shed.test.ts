// Where she stands, set on Days: a shed that is kept warm changes the days, an open flame says what it does, all without a signal.
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { describeInBrowser, open } from './support/app.ts'
import { onServer, titleOf, titleOtherThan } from './support/boat.ts'

const part = (page: Page) => page.locator('.part', { hasText: labelOf('daysScreen.whereSheStands') })

async function fill(page: Page, key: string, text: string): Promise<void> {
  const box = part(page).getByLabel(labelOf(`cell.shed.${key}`), { exact: true })
  await box.fill(text)
  await box.blur()
}

const heater = (page: Page, name: string) =>
  part(page).getByRole('radio', { name, exact: true }).check({ force: true })

describeInBrowser('where she stands', (app) => {
  it('makes other days of a shed that is kept warm, and says what its flame does', async () => {
    const context = await app().device({ viewport: { width: 900, height: 900 } })
    const page = await context.newPage()
    await page.clock.setFixedTime(new Date('2027-09-20T06:30:00Z'))
    await open(page, '/job/cruiser-topsides/days')
    const cold = await titleOf(page)
    await context.setOffline(true)
    await part(page).getByLabel(labelOf('cell.place.shelter'), { exact: true }).selectOption('heated shed')
    // The job says that no heater is in it.
    await part(page).getByText('no heater is in it').waitFor()
    await part(page).getByText(labelOf('daysScreen.shedIs')).click()
    await heater(page, 'Electric')
    await fill(page, 'heatTo', '16')
    const warm = await titleOtherThan(page, cold)
    await part(page).getByText('kept at 16').waitFor()
    await fill(page, 'heaterPower', '3')
    await part(page).getByText('The heater is too small').waitFor()
    await heater(page, 'Unvented flame')
    await part(page).locator('.caution-panel-danger').waitFor()
    await titleOtherThan(page, warm)
    await fill(page, 'heaterPower', 'a lot')
    await part(page).getByText('is not a number').waitFor()
    const { violations } = await new AxeBuilder({ page }).include('.days-parts').analyze()
    expect(violations.map(({ id }) => id)).toEqual([])
    // What was there before, for whoever opens the job after this.
    await heater(page, 'None')
    await part(page).getByLabel(labelOf('cell.place.shelter'), { exact: true }).selectOption('shed')
    await context.setOffline(false)
    await onServer(page)
    await context.close()
  })
})
