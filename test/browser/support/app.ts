// The built program on loopback with the sample jobs in a folder of its own, and a browser to open it in.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core'
import { afterAll, beforeAll, describe } from 'vitest'
import { labelOf } from '#words'
import { browserArguments, findBrowser, NO_BROWSER } from '../../../scripts/browser/find.mjs'
import { freePort, type Served, serve } from '../../support/served.ts'

export type App = {
  readonly origin: string
  /** Where the server keeps its data. */
  readonly folder: string
  /** Another device: its own storage, its own service worker. */
  readonly device: (options?: BrowserContextOptions) => Promise<BrowserContext>
  /** Stops the server, lets something happen to its folder meanwhile, and starts it again. */
  readonly restart: (meanwhile: (folder: string) => Promise<void>, more?: readonly string[]) => Promise<void>
  readonly close: () => Promise<void>
}

/** Long, for a machine that does other work beside. */
const patienceMs = 30_000

/** Where the run must not pass without a browser, a missing one is a failure. */
const must = process.env.HARDSTAND_BROWSER === 'needed'

/**
 * Tests in a browser. Where there is none they are skipped by name; with `HARDSTAND_BROWSER=needed` they fail instead.
 */
export function describeInBrowser(title: string, tests: (app: () => App) => void): void {
  const found = findBrowser()
  describe.skipIf(found === undefined && !must)(title, () => {
    let app: App | undefined
    beforeAll(async () => {
      app = await openApp()
    })
    afterAll(() => app?.close())
    tests(() => {
      if (!app) throw new Error('app: not open')
      return app
    })
  })
}

export async function openApp(): Promise<App> {
  const executablePath = findBrowser()
  if (executablePath === undefined) throw new Error(NO_BROWSER)
  const folder = await mkdtemp(join(tmpdir(), 'hardstand-browser-'))
  const port = await freePort()
  let served = serve({ port, folder, more: ['--samples'] })
  try {
    const origin = `http://127.0.0.1:${port}`
    await answers(served, `${origin}/api/hello`)
    const browser = await chromium.launch({ executablePath, args: browserArguments() })
    return {
      origin,
      folder,
      device: (options) => newDevice(browser, { baseURL: origin, ...options }),
      restart: async (meanwhile, more = []) => {
        served.child.kill('SIGTERM')
        await served.ended
        await meanwhile(folder)
        served = serve({ port, folder, more })
        await answers(served, `${origin}/api/hello`)
      },
      close: async () => {
        await browser.close()
        await stopped(served, folder)
      },
    }
  } catch (error) {
    await stopped(served, folder)
    throw error
  }
}

async function newDevice(browser: Browser, options: BrowserContextOptions): Promise<BrowserContext> {
  const context = await browser.newContext({ locale: 'en-GB', timezoneId: 'Europe/Berlin', ...options })
  context.setDefaultTimeout(patienceMs)
  return context
}

async function stopped({ child, ended }: Served, folder: string): Promise<void> {
  child.kill('SIGTERM')
  await ended
  await rm(folder, { recursive: true, force: true })
}

/** Until the server answers; it ends by itself when it cannot start. */
async function answers({ child, output }: Served, url: string): Promise<void> {
  const until = Date.now() + patienceMs
  for (;;) {
    if (child.exitCode !== null || Date.now() > until)
      throw new Error(`server: not started, said ${output()}`)
    const answer = await fetch(url).catch(() => undefined)
    if (answer?.ok) return
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
}

/** The sheet is drawn with its plan: nothing says any more that it is opening or planning. */
export async function drawn(page: Page): Promise<void> {
  await page.waitForFunction(
    (waits) => {
      const title = document.querySelector('main h1')?.textContent?.trim() ?? ''
      const bars = [...document.querySelectorAll('main [role=progressbar]')]
      return title !== '' && !bars.some((bar) => waits.includes(bar.getAttribute('aria-label') ?? ''))
    },
    [labelOf('frame.opening'), labelOf('frame.planning')],
    { timeout: patienceMs },
  )
  await page.evaluate(() => document.fonts.ready.then(() => undefined))
}

export async function open(page: Page, path: string): Promise<void> {
  await page.goto(path)
  // The stick counts the zones as soon as the job has come from the server.
  if (path.startsWith('/job/')) {
    await page.locator('.story-stick-count', { hasText: 'zones' }).first().waitFor({ state: 'attached' })
  }
  await drawn(page)
}
