// Every route against everything that a page elsewhere, a broken page or a rude hand can send: each is refused in the
// one shape of an error, and nothing in the store has changed.
import { request as httpRequest } from 'node:http'
import { connect } from 'node:net'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { WebSocket } from 'ws'
import { readWeatherCsv, seriesHash } from '#intake'
import { createMemoryStore, type Store } from '#store'
import { createWords } from '#words'
import { startTestServer, type TestServer } from '../../test/support/test-server.ts'
import { serverLimits } from './limits.ts'
import { apiRoutes } from './routes/api-routes.ts'
import type { RouteContext } from './routes/route.ts'

type Answer = {
  readonly status: number
  readonly headers: Readonly<Record<string, string | string[] | undefined>>
  readonly body: string
}

type Ask = {
  readonly method: string
  readonly path: string
  readonly headers?: Readonly<Record<string, string>>
  readonly body?: string | Buffer
}

const hash = 'a'.repeat(64)
const limits = { ...serverLimits, jsonBytes: 20_000, weatherBytes: 40_000, closeMs: 200 }

/** The routes as the server has them, with a place for each name in the address. */
const routes = apiRoutes({ sessions: {}, limits } as unknown as RouteContext).flatMap(({ path, methods }) =>
  Object.keys(methods).map((method) => ({
    method,
    path: path.replace(':job', 'teal').replace(':hash', hash),
  })),
)
const writing = routes.filter(({ method }) => method !== 'GET')

const words = createWords({ locale: 'en-GB', system: 'metric' })

let open: TestServer
let closed: TestServer
let store: Store

beforeAll(async () => {
  store = createMemoryStore()
  await store.append('work:teal', new Uint8Array([0, 0]))
  open = await startTestServer({ store, limits })
  closed = await startTestServer({
    store,
    limits,
    passphrases: { all: 'everything in here', work: 'only the work' },
  })
})

afterAll(async () => {
  await open.server.close()
  await closed.server.close()
})

function ask(server: TestServer, { method, path, headers = {}, body }: Ask): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const made = httpRequest(
      { host: '127.0.0.1', port: server.port, method, path, headers: { origin: server.origin, ...headers } },
      (response) => {
        const chunks: Buffer[] = []
        response.on('data', (chunk) => chunks.push(chunk))
        response.on('end', () =>
          resolve({
            status: response.statusCode ?? 0,
            headers: response.headers,
            body: Buffer.concat(chunks).toString(),
          }),
        )
      },
    )
    made.on('error', reject)
    made.end(method === 'GET' ? undefined : body)
  })
}

const json = { 'content-type': 'application/json' }

/** Everything in the store, to be compared. */
async function held(): Promise<unknown> {
  const names = await store.documentNames()
  const documents = await Promise.all(names.map((name) => store.document(name)))
  const jobs = await store.jobs()
  return { documents, jobs, weather: await store.weatherHashes() }
}

async function refused(
  server: TestServer,
  given: Ask,
  expected: { status: number; code: string },
): Promise<void> {
  const before = await held()
  const answer = await ask(server, given)
  expect({ status: answer.status, ...faultOf(answer) }).toEqual(expected)
  expect(await held()).toEqual(before)
}

/** The one shape, to the letter, with a code that has a sentence. */
function faultOf({ headers, body }: Answer): { readonly code: string } {
  expect(headers['content-type']).toBe('application/json; charset=utf-8')
  expect(headers['cache-control']).toBe('no-store')
  safe(headers)
  const { error, ...rest } = JSON.parse(body)
  expect(rest).toEqual({})
  expect(Object.keys(error).sort()).toEqual(['code', 'data'])
  const sentence = words.sentence(error.code, error.data)
  expect(sentence).not.toBe(error.code)
  expect(sentence).not.toMatch(/undefined|NaN|[{}]/)
  return { code: error.code }
}

function safe(headers: Answer['headers']): void {
  expect(headers).toMatchObject({
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'content-security-policy': expect.stringContaining("frame-ancestors 'none'"),
  })
}

describe.each([...routes, { method: 'GET', path: '/' }, { method: 'GET', path: '/sync' }])(
  '$method $path',
  ({ method, path }) => {
    it.each([
      'evil.example',
      'evil.example:80',
      '0.0.0.0',
      '[::]',
      'localhost.evil.example',
      '127.0.0.1@evil',
      ' ',
    ])('does not answer under the name “%s”', (host) =>
      refused(
        open,
        { method, path, headers: { ...json, host }, body: '{}' },
        { status: 403, code: 'server.hostNotAllowed' },
      ),
    )

    it.each(['http://evil.example', 'null', 'https://127.0.0.1', 'http://localhost:1'])(
      'does nothing for the page %s',
      (origin) =>
        refused(
          open,
          { method, path, headers: { ...json, origin }, body: '{}' },
          { status: 403, code: 'server.originNotAllowed' },
        ),
    )

    it.each(['DELETE', 'PATCH', 'OPTIONS', 'TRACE', 'PROPFIND'])('refuses %s', (wrong) =>
      refused(open, { method: wrong, path }, { status: 405, code: 'server.methodNotAllowed' }),
    )

    it('says which methods it knows', async () => {
      const answer = await ask(open, { method: 'DELETE', path })
      expect(String(answer.headers.allow)).toContain('GET')
    })
  },
)

describe.each(routes)('$method $path, when nobody signed in', ({ method, path }) => {
  it('gives nothing and takes nothing', async () => {
    const before = await held()
    const body = method === 'GET' ? undefined : '{"passphrase":"a wrong one","entries":[]}'
    const answer = await ask(closed, { method, path, headers: json, ...(body ? { body } : {}) })
    const isOpen = path === '/api/hello' || path === '/api/sign-out'
    expect(answer.status).toBe(isOpen ? 200 : 401)
    expect(answer.body).not.toContain('teal')
    expect(await held()).toEqual(before)
  })
})

describe.each(writing)('$method $path', ({ method, path }) => {
  it.each([
    'application/x-www-form-urlencoded',
    'multipart/form-data; boundary=x',
    'text/plain',
    'text/csv',
    'application/jsonp',
    '',
  ])('takes no body of type “%s”', (type) =>
    refused(
      open,
      { method, path, headers: { 'content-type': type }, body: '{"entries":[]}' },
      { status: 415, code: 'server.typeNotTaken' },
    ),
  )

  it('takes no packed body', () =>
    refused(
      open,
      { method, path, headers: { ...json, 'content-encoding': 'gzip' }, body: '{}' },
      { status: 415, code: 'server.typeNotTaken' },
    ))

  it.each(['', '{', '[1,', '\u0000', '{"entries":[}', Buffer.from([0x22, 0xff, 0x22])])(
    'takes nothing that is not JSON',
    (body) =>
      refused(open, { method, path, headers: json, body }, { status: 400, code: 'server.jsonNotRead' }),
  )

  it('takes no body that is too large, whether it says so or not', async () => {
    const body = JSON.stringify({ csv: 'x'.repeat(60_000) })
    await refused(open, { method, path, headers: json, body }, { status: 413, code: 'server.bodyTooLarge' })
    const streamed = { ...json, 'transfer-encoding': 'chunked' }
    await refused(
      open,
      { method, path, headers: streamed, body },
      { status: 413, code: 'server.bodyTooLarge' },
    )
  })

  it('takes nothing when the origin is not said', async () => {
    const before = await held()
    const { status, ...answer } = await ask(open, {
      method,
      path,
      headers: { ...json, origin: '' },
      body: '{}',
    })
    expect(status).toBe(403)
    faultOf({ status, ...answer })
    expect(await held()).toEqual(before)
  })

  const hasBody = path !== '/api/sign-out'
  it.runIf(hasBody).each(['null', '[]', '"x"', '7', '{}', '{"entries":7,"csv":7,"passphrase":7}'])(
    'understands nothing else, such as %s',
    (body) =>
      refused(open, { method, path, headers: json, body }, { status: 400, code: 'server.bodyNotUnderstood' }),
  )
})

describe('a batch of the log', () => {
  const post = (entries: unknown, job = 'teal'): Ask => ({
    method: 'POST',
    path: `/api/jobs/${job}/log`,
    headers: json,
    body: JSON.stringify({ entries }),
  })
  const bad: readonly (readonly [string, unknown])[] = [
    ['an entry that is none', [7]],
    ['no id', [{ cells: {} }]],
    ['an empty id', [{ id: '', cells: {} }]],
    ['an id with a hidden letter', [{ id: 'a\u0000', cells: {} }]],
    ['a long id', [{ id: 'a'.repeat(101), cells: {} }]],
    ['no cells', [{ id: 'a' }]],
    ['cells in a list', [{ id: 'a', cells: [] }]],
    ['a cell that is no text', [{ id: 'a', cells: { text: 7 } }]],
    ['a long cell', [{ id: 'a', cells: { text: 'x'.repeat(8001) } }]],
    ['many cells', [{ id: 'a', cells: Object.fromEntries([...Array(41).keys()].map((k) => [`k${k}`, ''])) }]],
    [
      'one bad entry after a good one',
      [
        { id: 'good', cells: {} },
        { id: 'bad', cells: { text: null } },
      ],
    ],
  ]
  it.each(bad)('with %s is refused whole', (_name, entries) =>
    refused(open, post(entries), { status: 400, code: 'server.bodyNotUnderstood' }),
  )

  it('of 201 entries is refused', () =>
    refused(open, post([...Array(201).keys()].map((k) => ({ id: `e${k}`, cells: {} }))), {
      status: 413,
      code: 'server.batchTooLong',
    }))

  it.each(['Teal', 'a'.repeat(65), '..', 'a%2Fb', '%00', '-a'])('of a job “%s” has no address', (job) =>
    refused(open, post([{ id: 'a', cells: {} }], job), { status: 404, code: 'server.notFound' }),
  )

  it.each(['-1', 'x', '1e3', '9'.repeat(30), ''])('is not read from the place “%s”', (after) =>
    refused(
      open,
      { method: 'GET', path: `/api/jobs/teal/log?after=${after}` },
      { status: 400, code: 'server.cursorNotRead' },
    ),
  )
})

describe('weather', () => {
  const csv = 'time,airC,humidityPct\n2027-04-12T06:00Z,10,60\n2027-04-12T07:00Z,11,58\n'
  const put = (path: string, text: string): Ask => ({
    method: 'PUT',
    path: `/api/weather/${path}`,
    headers: json,
    body: JSON.stringify({ csv: text }),
  })

  it('under another hash is refused', () =>
    refused(open, put(hash, csv), { status: 422, code: 'server.weatherDiffers' }))

  it('that cannot be read is refused', () =>
    refused(open, put(hash, 'time,airC\nx'), { status: 422, code: 'server.weatherNotRead' }))

  it.each(['a', hash.toUpperCase(), `${hash}a`, '..%2f..'])('called “%s” has no address', (name) =>
    refused(open, put(name, csv), { status: 404, code: 'server.notFound' }),
  )

  it('under its own hash is kept, and comes back with the same hash', async () => {
    const server = await startTestServer()
    const own = hashOf(csv)
    expect((await ask(server, put(own, csv))).status).toBe(200)
    expect((await ask(server, put(own, csv))).status).toBe(200)
    const back = await ask(server, { method: 'GET', path: `/api/weather/${own}` })
    expect(back.headers['content-type']).toBe('text/csv; charset=utf-8')
    expect(hashOf(back.body)).toBe(own)
    await server.server.close()
  })
})

function hashOf(csv: string): string {
  const read = readWeatherCsv(Buffer.from(csv))
  if (!read.ok) throw new Error('weather: not read')
  return seriesHash(read.series)
}

describe('the socket', () => {
  const refusals: readonly (readonly [string, string, Readonly<Record<string, string>>, number])[] = [
    ['of another page', '/sync', { origin: 'http://evil.example' }, 403],
    ['of nobody', '/sync', { origin: '' }, 403],
    ['under another name', '/sync', { host: 'evil.example' }, 403],
    ['elsewhere', '/api/hello', {}, 404],
    ['of the pages', '/', {}, 404],
    ['below', '/sync/x', {}, 404],
  ]
  it.each(refusals)('%s is refused', async (_name, path, headers, status) => {
    const before = await held()
    expect(await upgrade(open, path, headers)).toBe(status)
    expect(await held()).toEqual(before)
  })

  it('is not for somebody who has not signed in', async () => {
    expect(await upgrade(closed, '/sync', {})).toBe(401)
    expect(await upgrade(closed, '/sync', { cookie: 'hardstand_session=all.9999999999999.forged' })).toBe(401)
  })

  it('beyond the last is refused', async () => {
    const server = await startTestServer({ limits: { ...limits, sockets: 1 } })
    const first = new WebSocket(`ws://127.0.0.1:${server.port}/sync`, { origin: server.origin })
    await new Promise((resolve) => first.once('open', resolve))
    expect(await upgrade(server, '/sync', {})).toBe(503)
    await server.server.close()
  })
})

/** Status with which a socket is refused; 101 when it opens. */
function upgrade(
  server: TestServer,
  path: string,
  headers: Readonly<Record<string, string>>,
): Promise<number> {
  return new Promise((resolve, reject) => {
    const url = `ws://127.0.0.1:${server.port}${path}`
    const socket = new WebSocket(url, { headers: { origin: server.origin, ...headers } })
    socket.once('open', () => {
      socket.close()
      resolve(101)
    })
    socket.once('unexpected-response', (_request, response) => {
      const chunks: Buffer[] = []
      response.on('data', (chunk) => chunks.push(chunk))
      response.on('end', () => {
        const status = response.statusCode ?? 0
        faultOf({ status, headers: response.headers, body: Buffer.concat(chunks).toString() })
        resolve(status)
      })
    })
    socket.once('error', reject)
  })
}

describe('what is no request', () => {
  it.each([
    '\r\n\r\n',
    'GET\r\n\r\n',
    'GET / HTTP/9.9\r\n\r\n',
    '\u0000\u0001\u0002\r\n\r\n',
    'GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n',
  ])('gets no answer but a refusal, and the server goes on', async (text) => {
    const answer = await raw(open.port, text)
    expect(answer).toMatch(/^(HTTP\/1\.1 (400|403) |$)/)
    expect((await ask(open, { method: 'GET', path: '/api/hello' })).status).toBe(200)
  })
})

function raw(port: number, text: string): Promise<string> {
  return new Promise((resolve) => {
    const chunks: Buffer[] = []
    const socket = connect(port, '127.0.0.1', () => socket.end(text))
    socket.on('data', (chunk) => chunks.push(chunk))
    socket.on('error', () => {})
    socket.on('close', () => resolve(Buffer.concat(chunks).toString()))
  })
}
