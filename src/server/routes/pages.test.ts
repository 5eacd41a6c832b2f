import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { Refused } from '../http/refusal.ts'
import { createPages } from './pages.ts'

const base = mkdtempSync(join(tmpdir(), 'hardstand-pages-'))
const folder = join(base, 'web')
mkdirSync(join(folder, 'assets'), { recursive: true })
writeFileSync(join(base, 'secret.txt'), 'secret')
writeFileSync(join(folder, 'index.html'), '<!doctype html>start')
writeFileSync(join(folder, 'sw.js'), '1')
writeFileSync(join(folder, '.hidden.js'), 'secret')
writeFileSync(join(folder, 'assets', 'index-BKTNZ7er.js'), '2')
symlinkSync(join(base, 'secret.txt'), join(folder, 'link.txt'))
afterAll(() => rmSync(base, { recursive: true, force: true }))

const pages = createPages(folder)
const give = (path: string, headers: Readonly<Record<string, string>> = {}): Promise<Response> =>
  pages.give(new Request(`http://localhost${path}`, { headers }))

describe('a page', () => {
  it.each(['/', '/index.html', '/jobs', '/jobs/open-powerboat/days'])(
    'at %s is the start, looked up anew',
    async (path) => {
      const answer = await give(path)
      expect(await answer.text()).toBe('<!doctype html>start')
      expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8')
      expect(answer.headers.get('cache-control')).toBe('no-cache')
    },
  )

  it('that has not changed is not sent again', async () => {
    const tag = String((await give('/')).headers.get('etag'))
    expect((await give('/', { 'if-none-match': tag })).status).toBe(304)
  })
})

describe('a file', () => {
  it('with a hash in its name is kept for good, the service worker never', async () => {
    expect((await give('/assets/index-BKTNZ7er.js')).headers.get('cache-control')).toContain('immutable')
    const worker = await give('/sw.js')
    expect(worker.headers.get('cache-control')).toBe('no-cache')
    expect(worker.headers.get('content-type')).toBe('text/javascript; charset=utf-8')
  })

  it.each([
    '/assets/none-12345678.js',
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/assets/..%5c..%5csecret.txt',
    '/.hidden.js',
    '/link.txt',
    '//secret.txt',
    '/secret.txt%00.js',
    '/C:/secret.txt',
    `/${'a/'.repeat(500)}secret.txt`,
  ])('outside the folder or hidden is not there: %s', async (path) => {
    const found = await give(path).then(
      (answer) => answer.text(),
      (error) => (error instanceof Refused ? error.refusal.status : error),
    )
    expect(found).toBe(404)
  })

  it('of pages that are not built is told', async () => {
    const missing = createPages(join(base, 'none')).give(new Request('http://localhost/'))
    await expect(missing).rejects.toMatchObject({ refusal: { code: 'server.pagesMissing' } })
  })
})
