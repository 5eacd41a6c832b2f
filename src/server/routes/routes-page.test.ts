import { readdirSync, readFileSync } from 'node:fs'
import { afterEach, describe, expect, it } from 'vitest'
import { startTestServer, type TestServer } from '../../../test/support/test-server.ts'
import { serverLimits } from '../limits.ts'
import { apiRoutes } from './api-routes.ts'
import type { RouteContext } from './route.ts'

const page = readFileSync(new URL('../../../docs/routes.md', import.meta.url), 'utf8')

type Row = {
  readonly method: string
  readonly path: string
  readonly who: string
  readonly kilobytes: number
}

/** `| \`POST /api/sign-in\` | everybody | 4 kB | … |` */
const rows: readonly Row[] = [...page.matchAll(/^\| `(\w+) (\/\S+)` \| ([^|]+) \| (?:(\d+) kB)? ?\|/gm)].map(
  ([, method = '', path = '', who = '', kilobytes = '0']) => ({
    method,
    path,
    who,
    kilobytes: Number(kilobytes),
  }),
)

const servers: TestServer[] = []

afterEach(async () => {
  for (const { server } of servers.splice(0)) await server.close()
})

async function start(): Promise<TestServer> {
  const started = await startTestServer()
  servers.push(started)
  return started
}

const send = ({ origin }: TestServer, { method, path }: Row, bytes: number): Promise<Response> =>
  fetch(`${origin}${path.replace(':job', 'teal').replace(':hash', 'f'.repeat(64))}`, {
    method,
    headers: { 'content-type': 'application/json', origin },
    body: JSON.stringify({ text: 'x'.repeat(bytes - '{"text":""}'.length) }),
  })

describe('the page of routes', () => {
  it('lists every route with its method and who may, and no other', () => {
    const registered = apiRoutes({} as RouteContext).flatMap(({ path, open, methods }) =>
      Object.keys(methods).map((method) => `${method} ${path} ${open ? 'everybody' : 'signed in'}`),
    )
    const listed = rows.map(({ method, path, who }) => `${method} ${path} ${who}`)
    expect(listed.filter((row) => row.includes(' /api/')).sort()).toEqual([...registered].sort())
    expect(listed).toContain('GET /sync signed in')
  })

  it('tells the largest body of each that takes one', async () => {
    const server = await start()
    const writing = rows.filter(({ method }) => method !== 'GET')
    expect(writing.length).toBeGreaterThan(3)
    for (const row of writing) {
      expect((await send(server, row, row.kilobytes * 1024)).status, row.path).not.toBe(413)
      expect((await send(server, row, row.kilobytes * 1024 + 1)).status, row.path).toBe(413)
    }
  })

  it('tells the figures of the limits', () => {
    const { pageEntries, batchEntries, documentsOnSocket, messageBytes } = serverLimits
    const figures = [
      `at most ${pageEntries}, each`,
      `at most ${batchEntries}, each`,
      `as many as ${documentsOnSocket} on`,
    ]
    for (const text of [...figures, `most ${messageBytes / 1024} kB`])
      expect(page.replaceAll('\n', ' ')).toContain(text)
  })

  it('lists every code that a request is refused with, under its status', () => {
    const folder = new URL('../', import.meta.url)
    const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts'))
      .map((file) => readFileSync(new URL(file, folder), 'utf8'))
    const refusals = /refus(?:e|al)\((\d+|404), (?:[^']*\? )?'(server\.\w+)'(?: : '(server\.\w+)')?/g
    const used = sources.flatMap((text) =>
      [...text.matchAll(refusals)].flatMap(([, status, ...codes]) =>
        codes.filter((code) => code !== undefined).map((code) => `${status} ${code}`),
      ),
    )
    const listed = [...page.matchAll(/^\| (\d{3}) \| (.*) \|$/gm)].flatMap(([, status, codes = '']) =>
      [...codes.matchAll(/`(server\.\w+)`/g)].map(([, code]) => `${status} ${code}`),
    )
    expect(listed.sort()).toEqual([...new Set(used)].sort())
  })
})
