// Weather given to a job from a file judges its hours, on another device too; a bad file says its lines.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'
import { describeInBrowser, drawn, open } from './support/app.ts'
import { onServer, titleOf, titleOtherThan } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

const file = (name: string): string => fileURLToPath(new URL(`../../samples/${name}`, import.meta.url))

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
    const box = here.locator('input[type=file]')
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
})
