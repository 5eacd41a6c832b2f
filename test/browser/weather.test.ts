// Weather given to a job from a file judges its hours, on another device too; a bad file says its lines.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { labelOf } from '#words'
import { madeEpw } from '../support/made-epw.mjs'
import { describeInBrowser, drawn, open } from './support/app.ts'
import { onServer, titleOf, titleOtherThan } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

const file = (name: string): string => fileURLToPath(new URL(`../../samples/${name}`, import.meta.url))

/** The weather of the sample: another test may have given another. */
async function giveOwn(page: Page): Promise<void> {
  await page.locator('input[type=file]').first().setInputFiles(file('open-powerboat.weather.csv'))
  await page.getByText('open-powerboat.weather.csv', { exact: false }).first().waitFor()
}

describeInBrowser('weather from a file', (app) => {
  it('moves the days, here and where the job is open too', async () => {
    const [one, two] = [await app().device(), await app().device()]
    const [here, there] = [await one.newPage(), await two.newPage()]
    for (const page of [here, there]) {
      await page.clock.setFixedTime(new Date('2027-04-10T08:00:00Z'))
      await open(page, jobPath('days'))
    }
    const first = await titleOf(here)
    expect(await titleOf(there)).toBe(first)
    const box = here.locator('input[type=file]').first()
    // One hour short: not what the samples brought to the server.
    const lines = readFileSync(file('deck-only.weather.csv'), 'utf8').trimEnd().split('\n')
    const buffer = Buffer.from(lines.slice(0, -1).join('\n'))
    await box.setInputFiles({ name: 'yard.csv', mimeType: 'text/csv', buffer })
    const second = await titleOtherThan(here, first)
    await onServer(here)
    await there.waitForFunction((title) => title === document.querySelector('main h1')?.textContent, second)
    await here.getByText('yard.csv', { exact: false }).first().waitFor()

    await box.setInputFiles(file('deck-only.yaml'))
    await here.locator('.give-weather-problems li').first().waitFor()
    await drawn(here)
    expect(await titleOf(here)).toBe(second)
    await one.close()
    await two.close()
  })

  it('goes on with a typical year where it ends, on the other device too, until that is taken away', async () => {
    const [one, two] = [await app().device(), await app().device()]
    const [here, there] = [await one.newPage(), await two.newPage()]
    for (const page of [here, there]) {
      await page.clock.setFixedTime(new Date('2027-04-10T08:00:00Z'))
      // The weather of the sample ends on the evening of the ninth.
      await open(page, jobPath('days/2027-07-08'))
    }
    await giveOwn(here)
    await here
      .locator('input[type=file]')
      .first()
      .setInputFiles({ name: 'station.epw', mimeType: 'text/plain', buffer: Buffer.from(madeEpw()) })
    for (const page of [here, there]) {
      await page.locator('.days-horizon-say').waitFor()
      await page.locator('.days-band-air').first().waitFor()
      expect(await page.locator('.days-horizon').count()).toBe(1)
    }
    await here.getByText('station.epw', { exact: false }).first().waitFor()
    expect(await here.getByText('open-powerboat.weather.csv', { exact: false }).count()).toBeGreaterThan(0)
    const found = await new AxeBuilder({ page: here }).include('main').analyze()
    expect(
      found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id} ${html.slice(0, 200)}`)),
    ).toEqual([])

    await here.getByRole('button', { name: labelOf('daysScreen.dropTypical') }).click()
    for (const page of [here, there]) await page.locator('.days-horizon-say').waitFor({ state: 'detached' })
    await one.close()
    await two.close()
  })

  it('of a logger under the shelter fits it, and the fit comes to the other device too', async () => {
    const [one, two] = [await app().device(), await app().device()]
    const [here, there] = [await one.newPage(), await two.newPage()]
    for (const page of [here, there]) {
      await page.clock.setFixedTime(new Date('2027-04-10T08:00:00Z'))
      await open(page, jobPath('days'))
    }
    const lines = readFileSync(file('open-powerboat.weather.csv'), 'utf8').trimEnd().split('\n')
    const head = lines.findIndex((line) => line.startsWith('time,'))
    // Air and humidity of five days as they were outside: a cover open at both ends.
    const rows = lines.slice(head + 201, head + 321).map((line) => line.split(',').slice(0, 3).join(','))
    await giveOwn(here)
    const box = here.locator(`input[type=file][aria-label="${labelOf('daysScreen.giveLogger')}"]`)
    const buffer = Buffer.from(['time,airC,humidityPct', ...rows].join('\n'))
    await box.setInputFiles({ name: 'under.csv', mimeType: 'text/csv', buffer })
    for (const page of [here, there])
      await page
        .getByText(/is fitted from 5.d of the logger/)
        .first()
        .waitFor()
    await onServer(here)
    await one.close()
    await two.close()
  })

  it('is read from a table of unknown columns once a person has said by keys what they are', async () => {
    const context = await app().device({ viewport: { width: 360, height: 740 } })
    const page = await context.newPage()
    await page.clock.setFixedTime(new Date('2027-04-10T08:00:00Z'))
    await open(page, jobPath('days'))
    const first = await titleOf(page)
    const hours = Array.from({ length: 72 }, (_, hour) => {
      const [day, clock] = [10 + Math.floor(hour / 24), String(hour % 24).padStart(2, '0')]
      return `${day}/04/2027 ${clock}:00;${58 + (hour % 24)};0,${50 + (hour % 24)}`
    })
    const send = (rows: readonly string[]): Promise<void> =>
      page
        .locator('input[type=file]')
        .first()
        .setInputFiles({
          ...{ name: 'shed.csv', mimeType: 'text/csv' },
          buffer: Buffer.from(['stamp;inside;wet', ...rows].join('\n')),
        })
    await send([...hours.slice(0, 40), '11/04/2027 16:00;warm;0,50', ...hours.slice(41)])
    const dialog = page.getByRole('dialog', { name: /shed\.csv/ })
    await dialog.waitFor()
    const column = (name: string) => dialog.getByRole('group', { name, exact: true })
    expect(await column('inside').getByRole('listitem').allTextContents()).toEqual([
      ...['58', '59', '60', '61', '62'],
    ])
    const is = labelOf('daysScreen.columnIs')
    for (const [name, to] of [
      ['stamp', 'time'],
      ['inside', 'airC'],
      ['wet', 'humidityPct'],
    ] as const) {
      const list = column(name).getByLabel(is)
      await list.focus()
      await list.selectOption(to)
    }
    await column('inside').getByLabel(labelOf('daysScreen.columnUnit')).selectOption('°F')
    await column('wet').getByLabel(labelOf('daysScreen.columnUnit')).selectOption('0..1')
    const found = await new AxeBuilder({ page }).include('dialog').analyze()
    expect(
      found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id} ${html.slice(0, 200)}`)),
    ).toEqual([])
    const small = await dialog.locator('select, button').evaluateAll((all) => {
      return all.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML)
    })
    expect(small).toEqual([])
    const read = dialog.getByRole('button', { name: labelOf('daysScreen.readTable') })
    await read.press('Enter')
    // The one row that is no figure is named by its line, and what was said is still there.
    await dialog.getByText(/^Line 42: .*warm/).waitFor()
    expect(await column('stamp').getByLabel(is).inputValue()).toBe('time')
    await page.keyboard.press('Escape')
    await send(hours)
    await dialog.waitFor()
    for (const [name, to] of [
      ['stamp', 'time'],
      ['inside', 'airC'],
      ['wet', 'humidityPct'],
    ] as const)
      await column(name).getByLabel(is).selectOption(to)
    await column('inside').getByLabel(labelOf('daysScreen.columnUnit')).selectOption('°F')
    await column('wet').getByLabel(labelOf('daysScreen.columnUnit')).selectOption('0..1')
    await read.click()
    await titleOtherThan(page, first)
    const source = page.locator('.weather-source')
    await source.filter({ hasText: '72 hours' }).waitFor()
    expect(await source.textContent()).toContain('table with stamp, inside, wet')
    await context.close()
  })
})
