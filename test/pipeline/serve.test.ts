// The built program as a server, from its first line to its last, with the sentences for what keeps it from starting.
import { chmod, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { type LogPage, partOf, shopJobs } from '#replica'
import { openPage, until } from '../support/page.ts'
import { freePort, type Served, type ServeOptions, serve } from '../support/served.ts'

const atEnd: (() => Promise<unknown>)[] = []

afterEach(async () => {
  for (const end of atEnd.splice(0).reverse()) await end()
})

async function newFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'hardstand-serve-'))
  atEnd.push(() => rm(folder, { recursive: true, force: true }))
  return folder
}

function start(options: ServeOptions): Served {
  const served = serve(options)
  atEnd.push(async () => {
    served.child.kill('SIGKILL')
    await served.ended
  })
  return served
}

async function up(options: ServeOptions): Promise<Served> {
  const served = start(options)
  await until(served.output, () => served.output().includes('http://'), 60_000)
  return served
}

describe('hardstand serve', { timeout: 180_000 }, () => {
  it('puts in the sample jobs once, and ends cleanly when it is told to', async () => {
    const folder = await newFolder()
    for (const signal of ['SIGTERM', 'SIGINT'] as const) {
      const port = await freePort()
      const served = await up({ port, folder, more: ['--samples'] })
      const page = openPage(port)
      atEnd.push(page.close)
      const shop = page.share('shop')
      const money = page.share('money:open-powerboat')
      const work = page.share('work:deck-only')
      await until('the list', () => shop.kept() && money.kept() && work.kept())
      expect(shopJobs(shop.doc).map(({ id }) => id)).toEqual([
        'open-powerboat',
        'deck-only',
        'cruiser-topsides',
      ])
      expect(shopJobs(shop.doc).every(({ name, boatName }) => name !== '' && boatName !== '')).toBe(true)
      expect(Object.keys(partOf(money.doc)).length).toBeGreaterThan(0)
      const hash = partOf(work.doc).weather?.hash
      const weather = await fetch(`http://127.0.0.1:${port}/api/weather/${hash}`)
      expect(await weather.text()).toContain('airC')
      const log = await fetch(`http://127.0.0.1:${port}/api/jobs/open-powerboat/log`)
      expect(((await log.json()) as LogPage).entries.length).toBeGreaterThan(0)
      served.child.kill(signal)
      expect(await served.ended).toBe(0)
      expect(served.output()).toContain('Everything is on the disk.')
      await page.close()
    }
  })

  it('says when the folder is in use, and when the port is', async () => {
    const folder = await newFolder()
    const port = await freePort()
    await up({ port, folder })
    const second = start({ port: await freePort(), folder })
    expect(await second.ended).toBe(1)
    expect(second.output()).toMatch(/in use by another process/)
    const third = start({ port, folder: await newFolder() })
    expect(await third.ended).toBe(1)
    expect(third.output()).toBe(
      `Port ${port} is taken by another program. Close it, or choose another port with --port.\n`,
    )
  })

  it.each([
    [{ HARDSTAND_PASSPHRASE: 'short' }, /too short/],
    [{ HARDSTAND_PASSPHRASE_WORK: 'long enough' }, /none for everything/],
    [{ HARDSTAND_PASSPHRASE: 'long enough', HARDSTAND_PASSPHRASE_WORK: 'long enough' }, /are the same/],
  ])('does not start with passphrases that keep nothing: %o', async (environment, saying) => {
    const served = start({ port: 0, folder: await newFolder(), environment })
    expect(await served.ended).toBe(1)
    expect(served.output()).toMatch(saying)
  })

  it.skipIf(process.platform === 'win32')(
    "takes its passphrase from a file that is its owner's alone, and from no other",
    async () => {
      const folder = await newFolder()
      const file = join(folder, 'passphrase')
      await writeFile(file, 'a long word\nsecond line\n')
      const more = ['--passphrase-file', file]
      for (const mode of [0o644, 0o640]) {
        await chmod(file, mode)
        const open = start({ port: 0, folder, more })
        expect(await open.ended).toBe(1)
        expect(open.output()).toMatch(/Others on this computer may read .*chmod 600/)
      }
      await chmod(file, 0o600)
      const port = await freePort()
      await up({ port, folder, more })
      const origin = `http://127.0.0.1:${port}`
      const enter = (passphrase: string): Promise<Response> =>
        fetch(`${origin}/api/sign-in`, {
          method: 'POST',
          headers: { 'content-type': 'application/json', origin },
          body: JSON.stringify({ passphrase }),
        })
      expect((await enter('a long word')).status).toBe(200)
      expect((await enter('second line')).status).toBe(401)
      expect((await fetch(`${origin}/api/jobs/teal/log`)).status).toBe(401)
    },
  )
})
