import { afterEach, describe, expect, it } from 'vitest'
import { openPage, until } from '../../test/support/page.ts'
import { startTestServer, type TestServer } from '../../test/support/test-server.ts'
import { serverLimits } from './limits.ts'
import type { ServerOptions } from './options.ts'

const all = 'everything in here'
const work = 'the work alone'
const opened: { readonly close: () => Promise<void> }[] = []

afterEach(async () => {
  for (const each of opened.splice(0).reverse()) await each.close()
})

async function start(given: Partial<ServerOptions> = {}): Promise<TestServer> {
  const started = await startTestServer({ passphrases: { all, work }, ...given })
  opened.push(started.server)
  return started
}

const post = (server: TestServer, path: string, body: unknown, cookie = ''): Promise<Response> =>
  fetch(`${server.origin}${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: server.origin, cookie },
    body: JSON.stringify(body),
  })

async function signIn(server: TestServer, passphrase: string): Promise<string> {
  const answer = await post(server, '/api/sign-in', { passphrase })
  expect(answer.status).toBe(200)
  return String(answer.headers.get('set-cookie')).split(';')[0]!
}

const hello = async ({ origin }: TestServer, cookie = ''): Promise<unknown> =>
  (await fetch(`${origin}/api/hello`, { headers: { cookie } })).json()

describe('signing in', () => {
  it('opens what the passphrase is for, and says so', async () => {
    const server = await start()
    expect(await hello(server)).toEqual({
      protocol: 1,
      app: '9.9.9',
      signIn: true,
      sees: 'work',
      run: expect.stringMatching(/^[0-9a-f-]{36}$/),
    })
    expect(await hello(server, await signIn(server, all))).toMatchObject({ signIn: false, sees: 'all' })
    expect(await hello(server, await signIn(server, work))).toMatchObject({ signIn: false, sees: 'work' })
  })

  it('gives a cookie that no script reads and no other page sends', async () => {
    const server = await start()
    const answer = await post(server, '/api/sign-in', { passphrase: all })
    expect(answer.headers.get('set-cookie')).toMatch(/; HttpOnly; SameSite=Strict$/)
  })

  it('slows down after a few wrong passphrases, even for the right one, and lets in after the wait', async () => {
    let nowMs = 1_000_000
    const server = await start({ nowMs: () => nowMs })
    const statuses: number[] = []
    for (let tries = 0; tries < 5; tries += 1)
      statuses.push((await post(server, '/api/sign-in', { passphrase: `wrong ${tries}` })).status)
    expect(statuses).toEqual([401, 401, 401, 401, 429])
    const early = await post(server, '/api/sign-in', { passphrase: all })
    expect(early.status).toBe(429)
    expect(Number(early.headers.get('retry-after'))).toBeGreaterThan(0)
    nowMs += 2000
    await signIn(server, all)
  })

  it('ends by itself, and with another passphrase', async () => {
    let nowMs = 1_000_000
    const server = await start({ nowMs: () => nowMs })
    const cookie = await signIn(server, all)
    nowMs += 200 * 86_400_000
    expect(await hello(server, cookie)).toMatchObject({ signIn: true })
    const other = await start({ passphrases: { all: 'another one now' }, nowMs: () => 1_000_000 })
    expect(await hello(other, cookie)).toMatchObject({ signIn: true })
  })

  it.each(['all', 'work.9999999999999.x', 'all.9999999999999.', 'x'.repeat(9000)])(
    'does not take a cookie that was made up: %s',
    async (value) => {
      const server = await start()
      expect(await hello(server, `hardstand_session=${value}`)).toMatchObject({ signIn: true })
    },
  )
})

describe('whoever sees the work alone', () => {
  it('shares the work and never gets prices', async () => {
    const server = await start()
    const boss = openPage(server.port, { cookie: await signIn(server, all) })
    const hand = openPage(server.port, { cookie: await signIn(server, work) })
    opened.push(boss, hand)
    const prices = boss.share('money:teal')
    const theirs = hand.share('money:teal')
    theirs.doc.getMap('terms').set('rate', 'mine')
    const bossWork = boss.share('work:teal')
    const handWork = hand.share('work:teal')
    await until('work', () => bossWork.kept() && handWork.kept() && prices.kept())
    prices.doc.getMap('terms').set('rate', '80')
    handWork.doc.getMap('boat').set('name', 'Teal')
    await until('edits', () => bossWork.doc.getMap('boat').get('name') === 'Teal' && prices.kept())
    await until('refused', () => theirs.refusedWith() === 'server.documentRefused')
    expect(theirs.doc.getMap('terms').get('rate')).toBe('mine')
    expect(prices.doc.getMap('terms').get('rate')).toBe('80')
    expect((await server.store.document('money:teal')).updates.length).toBe(1)
  })
})

describe('signing out', () => {
  it('forgets the cookie and closes the sockets that were opened with it', async () => {
    const server = await start()
    const cookie = await signIn(server, all)
    const page = openPage(server.port, { cookie })
    opened.push(page)
    const shared = page.share('shop')
    await until('shared', shared.kept)
    const answer = await post(server, '/api/sign-out', {}, cookie)
    expect(answer.headers.get('set-cookie')).toContain('Max-Age=0')
    await until('closed', () => !shared.provider.isSynced)
  })
})

describe('a session that ends', () => {
  it('takes its sockets with it, and no new one is opened with the cookie', async () => {
    let nowMs = 1_000_000
    const server = await start({ nowMs: () => nowMs, limits: { ...serverLimits, heartbeatMs: 20 } })
    const page = openPage(server.port, { cookie: await signIn(server, all) })
    opened.push(page)
    const shared = page.share('shop')
    await until('shared', shared.kept)
    nowMs += 181 * 86_400_000
    await until('closed', () => !shared.provider.isSynced)
    shared.doc.getMap('jobs').set('teal', 'kept here')
    await new Promise((resolve) => setTimeout(resolve, 200))
    expect(shared.provider.isSynced).toBe(false)
    expect((await server.store.document('shop')).updates).toEqual([])
  })
})
