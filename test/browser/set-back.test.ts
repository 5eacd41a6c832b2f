// A server that was set back to an older copy of its data, or began anew: the page takes nothing for kept there that is
// not, and gives it everything again.
import { cp, mkdtemp, readdir, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { type LogPage, partOf, workDocument } from '#replica'
import { labelOf } from '#words'
import { openPage, until } from '../support/page.ts'
import { describeInBrowser, open } from './support/app.ts'
import { keptIs, onServer, setBeam } from './support/boat.ts'
import { jobPath } from './support/screens.ts'

async function write(page: Page, text: string): Promise<void> {
  await page.getByLabel(labelOf('log.note'), { exact: true }).fill(text)
  await page.getByRole('button', { name: labelOf('log.keep') }).click()
}

/** What the server itself has of the job. */
async function kept(origin: string) {
  const log = await fetch(`${origin}/api/jobs/open-powerboat/log`)
  const { entries } = (await log.json()) as LogPage
  const page = openPage(Number(new URL(origin).port))
  const work = page.share(workDocument('open-powerboat'))
  await until('open', work.kept)
  const { boat, weather } = partOf(work.doc)
  await page.close()
  const file = await fetch(`${origin}/api/weather/${String(weather?.hash)}`)
  return { notes: entries.map(({ cells }) => cells.text), beam: boat?.beam, weather: file.status }
}

async function empty(folder: string): Promise<void> {
  for (const name of await readdir(folder)) await rm(join(folder, name), { recursive: true })
}

describeInBrowser('a server with less than it had', (app) => {
  it('is given all of it again, and until then nothing counts as kept there', async () => {
    const backup = await mkdtemp(join(tmpdir(), 'hardstand-backup-'))
    const device = await app().device()
    const page = await device.newPage()
    await app().restart((folder) => cp(folder, backup, { recursive: true }))
    await open(page, jobPath('boat'))
    await onServer(page)
    await setBeam(page, '2.91 m')
    await page.evaluate((path) => history.pushState(null, '', path), jobPath('log'))
    await write(page, 'Sanded the keel')
    await onServer(page)
    expect(await kept(app().origin)).toMatchObject({ beam: '2.91 m' })

    for (const older of [
      (folder: string) => cp(backup, folder, { recursive: true }),
      () => Promise.resolve(),
    ]) {
      await app().restart(async (folder) => {
        await empty(folder)
        await older(folder)
        await keptIs(page, 'device')
      })
      await onServer(page)
      const now = await kept(app().origin)
      expect(now).toMatchObject({ beam: '2.91 m', weather: 200 })
      expect(now.notes).toContain('Sanded the keel')
    }
    await device.close()
    await rm(backup, { recursive: true })
  })
})
