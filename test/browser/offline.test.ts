// Without a signal: what is changed stays, through a reload too, and goes to the others when the signal is back.
import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { createWords, labelOf } from '#words'
import { describeInBrowser, drawn, open } from './support/app.ts'
import { beamBox, keptIs, onServer, setBeam, titleOf, titleOtherThan } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

const words = createWords({ locale: 'en-GB', system: 'metric' })

/** The service worker has everything and answers for this page. */
async function readyForTheShed(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
  await page.reload()
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
}

describeInBrowser('without a signal', (app) => {
  it('keeps a change through a reload, and gives it to another device afterwards', async () => {
    const shed = await app().device()
    const page = await shed.newPage()
    await open(page, jobPath('boat'))
    await readyForTheShed(page)
    await drawn(page)
    await onServer(page)
    const first = await titleOf(page)

    await shed.setOffline(true)
    await setBeam(page, '2.82 m')
    const changed = await titleOtherThan(page, first)
    await keptIs(page, 'device')
    await page.reload()
    await drawn(page)
    expect(await beamBox(page).inputValue()).toBe('2.82 m')
    expect(await titleOf(page)).toBe(changed)

    await shed.setOffline(false)
    await onServer(page)
    const office = await app().device()
    const other = await office.newPage()
    await open(other, jobPath('boat'))
    await other.waitForFunction((title) => document.querySelector('main h1')?.textContent === title, changed)
    expect(await beamBox(other).inputValue()).toBe('2.82 m')
    await Promise.all([shed.close(), office.close()])
  })

  it('gives a change of a job that was closed again, from the list of jobs', async () => {
    const shed = await app().device()
    const page = await shed.newPage()
    await open(page, jobPath('boat'))
    await readyForTheShed(page)
    await drawn(page)
    await onServer(page)

    await shed.setOffline(true)
    await setBeam(page, '2.61 m')
    await keptIs(page, 'device')
    await page.goto('/sums')
    await page.goto('/')
    await page.getByText(words.sentence('jobs.onlyHere', { count: 1, reach: 'away' })).waitFor()
    await page.getByText(labelOf('jobs.here')).first().waitFor()
    await page.goto('/job/deck-only/boat')
    await page.getByText('1 other job is only on this device.').first().waitFor()
    await page.goto('/')

    await shed.setOffline(false)
    await page.getByText(labelOf('jobs.here')).first().waitFor({ state: 'detached' })
    const office = await app().device()
    const other = await office.newPage()
    await open(other, jobPath('boat'))
    expect(await beamBox(other).inputValue()).toBe('2.61 m')
    await Promise.all([shed.close(), office.close()])
  })

  it('says which of two values stands where two devices wrote one cell, and takes back the other', async () => {
    const devices = await Promise.all([app().device(), app().device()])
    const pages = await Promise.all(devices.map((device) => device.newPage()))
    for (const page of pages) {
      await open(page, jobPath('boat'))
      await readyForTheShed(page)
      await drawn(page)
      await onServer(page)
    }
    for (const device of devices) await device.setOffline(true)
    const values = ['2.53 m', '2.57 m']
    for (const [at, page] of pages.entries()) {
      await setBeam(page, values[at]!)
      await keptIs(page, 'device')
    }
    for (const device of devices) await device.setOffline(false)
    for (const page of pages) await onServer(page)
    const mine = labelOf('frame.clashMine')
    await Promise.race(pages.map((page) => page.getByRole('button', { name: mine }).waitFor()))
    const counts = await Promise.all(pages.map((page) => page.getByRole('button', { name: mine }).count()))
    expect([...counts].sort()).toEqual([0, 1])
    const at = counts.indexOf(1)
    const [loser, winner] = [pages[at]!, pages[1 - at]!]
    const said = `${labelOf('cell.boat.beam')}: you wrote ${values[at]}, another device ${values[1 - at]}; ${values[1 - at]} stands.`
    await loser.reload()
    await drawn(loser)
    await loser.getByText(said).waitFor()
    await loser.getByRole('button', { name: mine }).click()
    await loser.getByText(said).waitFor({ state: 'detached' })
    expect(await beamBox(loser).inputValue()).toBe(values[at])
    await winner.waitForFunction(
      (text) =>
        [...document.querySelectorAll('main input')].some((box) => (box as HTMLInputElement).value === text),
      values[at],
    )
    expect(await winner.getByRole('button', { name: mine }).count()).toBe(0)
    for (const device of devices) await device.close()
  })

  it('works a quick sum on a phone', async () => {
    const phone = await app().device({
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    })
    const page = await phone.newPage()
    await open(page, '/')
    await readyForTheShed(page)
    await phone.setOffline(true)
    await page.goto('/sums/spread')
    await drawn(page)
    const boxes = page.locator('main input[type=text], main input:not([type])')
    const before = await page.locator('main').textContent()
    await boxes.first().fill('30 m²')
    await page.waitForFunction((text) => document.querySelector('main')?.textContent !== text, before)
    expect(await page.locator('main').textContent()).toMatch(/\d/)
    await phone.close()
  })

  it('prints a paper, with a signal and without', async () => {
    const shed = await app().device()
    const page = await shed.newPage()
    await open(page, jobPath('papers'))
    await readyForTheShed(page)
    for (const offline of [false, true]) {
      await shed.setOffline(offline)
      await page.reload()
      await drawn(page)
      expect(await firstPaper(page)).toMatch(/^%PDF-1\./)
    }
    await shed.close()
  })
})

/** The first bytes of the paper that the first button makes. */
async function firstPaper(page: Page): Promise<string> {
  await page
    .getByRole('button', { name: labelOf('papers.print') })
    .first()
    .click()
  const link = page.locator('.papers-made a[download]').first()
  await link.waitFor({ timeout: 60_000 })
  const [download] = await Promise.all([page.waitForEvent('download'), link.click()])
  return (await readFile(await download.path())).toString('latin1', 0, 8)
}
