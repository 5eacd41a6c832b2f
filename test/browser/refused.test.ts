// What the server does not take is said in sight and kept here, and it is given later: a job that is too large, and a
// passphrase that is asked for while the page is open.
import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterEach, expect, it } from 'vitest'
import * as Y from 'yjs'
import { workDocument } from '#replica'
import { createWords, labelOf } from '#words'
import { type App, describeInBrowser, drawn, open } from './support/app.ts'
import { beamBox, keptIs, onServer, setBeam } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

const words = createWords({ locale: 'en-GB', system: 'metric' })
const document = workDocument('open-powerboat')
const atEnd: (() => Promise<unknown>)[] = []

afterEach(async () => {
  for (const end of atEnd.splice(0).reverse()) await end()
})

async function boatPage(app: App): Promise<Page> {
  const device = await app.device()
  atEnd.push(() => device.close())
  const page = await device.newPage()
  await open(page, jobPath('boat'))
  await onServer(page)
  return page
}

/** The sentence is there, and nobody has to scroll to see it. */
async function inSight(page: Page, code: string): Promise<void> {
  const banner = page.locator('.banner', { hasText: words.sentence(code) }).first()
  await banner.waitFor()
  const { top, height } = await banner.evaluate((element) => ({
    top: element.getBoundingClientRect().top,
    height: innerHeight,
  }))
  expect(top).toBeGreaterThanOrEqual(0)
  expect(top).toBeLessThan(height)
}

const base64 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64')

/** As a page that was edited without a signal has left it. */
const putRow = (page: Page, update: Uint8Array): Promise<void> =>
  page.evaluate(
    ([name, text]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('hardstand')
        opening.onsuccess = () => {
          const change = opening.result.transaction('updates', 'readwrite')
          const bytes = Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0))
          change.objectStore('updates').add({ name, update: bytes })
          change.oncomplete = () => resolve(opening.result.close())
          change.onerror = () => reject(change.error)
        }
      }),
    [document, base64(update)] as const,
  )

/** As another tab tells an edit that it has kept. */
const tellTabs = (page: Page, update: Uint8Array): Promise<void> =>
  page.evaluate(
    ([name, text]) => {
      const tabs = new BroadcastChannel(`hardstand ${name}`)
      tabs.postMessage(Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0)))
      tabs.close()
    },
    [document, base64(update)] as const,
  )

describeInBrowser('what the server does not take', (app) => {
  it('is a job that is too large: it stays here, and is sent when it is shorter', async () => {
    const page = await boatPage(app())
    const remark = new Y.Doc()
    remark.getMap('job').set('remark', 'x'.repeat(5_000_000))
    await putRow(page, Y.encodeStateAsUpdate(remark))
    await page.reload()
    await inSight(page, 'web.serverTakesLess')
    await keptIs(page, 'device')
    await page.getByRole('button', { name: labelOf('frame.offerAgain') }).click()
    await inSight(page, 'web.serverTakesLess')
    await setBeam(page, '2.66 m')
    await keptIs(page, 'device')

    remark.on('update', (update: Uint8Array) => void tellTabs(page, update))
    remark.getMap('job').set('remark', 'short')
    await onServer(page)
    await page.locator('.banner-fault').waitFor({ state: 'detached' })
  })

  it('is anything before the passphrase is given; what was edited meanwhile is sent after it', async () => {
    const page = await boatPage(app())
    await app().restart(
      (folder) => writeFile(join(folder, 'passphrase'), 'teal and grey', { mode: 0o600 }),
      ['--passphrase-file', join(app().folder, 'passphrase')],
    )
    await page.getByText(words.sentence('jobs.signIn')).first().waitFor()
    await setBeam(page, '2.67 m')
    await keptIs(page, 'device')
    await page.getByLabel(labelOf('jobs.passphrase')).fill('teal and grey')
    await page.getByRole('button', { name: labelOf('jobs.enter') }).click()
    await onServer(page)
    await page.reload()
    await drawn(page)
    expect(await beamBox(page).inputValue()).toBe('2.67 m')
  })
})
