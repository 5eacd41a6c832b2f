// What a browser does to those who trust it: no room, data taken away, a page put aside, two tabs. Nothing is lost by it
// that could be kept, and nothing is called kept that is not.
import type { Page } from 'playwright-core'
import { afterEach, expect, it } from 'vitest'
import { createWords, labelOf } from '#words'
import { describeInBrowser, drawn, open } from './support/app.ts'
import { beamBox, keptIs, onServer, setBeam } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

const atEnd: (() => Promise<unknown>)[] = []

afterEach(async () => {
  for (const end of atEnd.splice(0).reverse()) await end()
})

const words = createWords({ locale: 'en-GB', system: 'metric' })

const bannerSays = (page: Page, code: string): Promise<void> =>
  page
    .locator('.banner', { hasText: words.sentence(code) })
    .first()
    .waitFor()

/** As the browser does when the disk is full, until `room` is called. */
async function fill(page: Page): Promise<{ readonly room: () => Promise<void> }> {
  await page.evaluate(() => {
    const { add } = IDBObjectStore.prototype
    Object.assign(globalThis, { addAgain: add })
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError')
    }
  })
  const room = (): Promise<void> =>
    page.evaluate(() => {
      IDBObjectStore.prototype.add = (globalThis as unknown as { addAgain: IDBObjectStore['add'] }).addAgain
    })
  return { room }
}

/** From one sheet to another as a link does it: the page stays. */
const step = (page: Page, path: string): Promise<void> =>
  page.evaluate((to) => history.pushState(null, '', to), path)

describeInBrowser('a device that keeps badly', (app) => {
  it('without room says so, and keeps the edit when there is room, though the job was left meanwhile', async () => {
    const device = await app().device()
    atEnd.push(() => device.close())
    const page = await device.newPage()
    await open(page, jobPath('boat'))
    await onServer(page)
    await device.setOffline(true)
    const disk = await fill(page)
    await setBeam(page, '2.71 m')
    await bannerSays(page, 'web.deviceFull')
    const asked = new Promise<string>((resolve) => {
      page.once('dialog', (dialog) => {
        resolve(dialog.type())
        void dialog.dismiss()
      })
    })
    await page.evaluate(() => setTimeout(() => location.reload(), 0))
    expect(await asked).toBe('beforeunload')
    await step(page, '/')
    await page.getByText(labelOf('import.pick')).waitFor()
    await disk.room()
    await page.waitForTimeout(6000)
    await step(page, jobPath('boat'))
    await drawn(page)
    expect(await beamBox(page).inputValue()).toBe('2.71 m')
  })

  it('whose data is deleted under the open page says so at once', async () => {
    const device = await app().device()
    atEnd.push(() => device.close())
    const page = await device.newPage()
    await open(page, jobPath('boat'))
    await onServer(page)
    await page.evaluate(() => void indexedDB.deleteDatabase('hardstand'))
    await bannerSays(page, 'web.deviceLost')
    expect(await page.locator('.kept-mark:visible').first().textContent()).toContain(
      labelOf('keptMark.fault'),
    )
    await step(page, '/job/deck-only/boat')
    await bannerSays(page, 'web.deviceLost')
  })

  it('that puts the page aside keeps what stands in the box', async () => {
    const device = await app().device()
    atEnd.push(() => device.close())
    const page = await device.newPage()
    await open(page, jobPath('boat'))
    await onServer(page)
    await device.setOffline(true)
    await beamBox(page).fill('2.73 m')
    await page.evaluate(() => {
      Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true })
      document.dispatchEvent(new Event('visibilitychange'))
    })
    await keptIs(page, 'device')
    const again = await device.newPage()
    await page.close()
    await device.setOffline(false)
    await open(again, jobPath('boat'))
    expect(await beamBox(again).inputValue()).toBe('2.73 m')
  })

  it('shows one tab what another edits and writes, without a server', async () => {
    const device = await app().device()
    atEnd.push(() => device.close())
    const [one, two] = [await device.newPage(), await device.newPage()]
    await open(one, jobPath('boat'))
    await open(two, jobPath('log'))
    await onServer(two)
    await device.setOffline(true)
    await setBeam(one, '2.74 m')
    await step(one, jobPath('log'))
    await one.getByLabel(labelOf('log.note'), { exact: true }).fill('Two tabs')
    await one.getByRole('button', { name: labelOf('log.keep') }).click()
    await two.getByText('Two tabs').first().waitFor()
    await keptIs(two, 'device')
    await step(two, jobPath('boat'))
    await drawn(two)
    expect(await beamBox(two).inputValue()).toBe('2.74 m')
    await device.setOffline(false)
    await onServer(two)
  })
})
