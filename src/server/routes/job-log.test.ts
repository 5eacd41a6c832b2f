import { afterEach, describe, expect, it } from 'vitest'
import type { LogPage, LogTaken } from '#replica'
import { startTestServer, type TestServer } from '../../../test/support/test-server.ts'
import { serverLimits } from '../limits.ts'

const atEnd: (() => Promise<void>)[] = []
afterEach(async () => {
  for (const end of atEnd.splice(0)) await end()
})

async function start(): Promise<TestServer> {
  const started = await startTestServer({ limits: { ...serverLimits, pageEntries: 3 } })
  atEnd.push(started.server.close)
  return started
}

async function post({ origin }: TestServer, job: string, ids: readonly string[]): Promise<LogTaken> {
  const entries = ids.map((id) => ({ id, cells: { kind: 'note', text: `text of ${id}` } }))
  const answer = await fetch(`${origin}/api/jobs/${job}/log`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin },
    body: JSON.stringify({ entries }),
  })
  expect(answer.status).toBe(200)
  return answer.json() as Promise<LogTaken>
}

const get = async ({ origin }: TestServer, job: string, after: number): Promise<LogPage> =>
  (await fetch(`${origin}/api/jobs/${job}/log?after=${after}`)).json() as Promise<LogPage>

describe('the log of a job', () => {
  it('goes out in pages behind a cursor, each entry once, in the order in which it came', async () => {
    const server = await start()
    await post(server, 'teal', ['a', 'b', 'c'])
    await post(server, 'other', ['x'])
    const { sequence } = await post(server, 'teal', ['b', 'd', 'e'])
    const seen: string[] = []
    let after = 0
    for (let more = true; more; ) {
      const page = await get(server, 'teal', after)
      seen.push(...page.entries.map(({ id, cells }) => `${id}: ${cells.text}`))
      after = page.entries.at(-1)?.sequence ?? after
      more = page.more
    }
    expect(seen).toEqual(['a', 'b', 'c', 'd', 'e'].map((id) => `${id}: text of ${id}`))
    expect(after).toBe(sequence)
    expect(await get(server, 'teal', after)).toMatchObject({ entries: [], more: false })
  })

  it('keeps what was written first under an id', async () => {
    const server = await start()
    await post(server, 'teal', ['a'])
    const before = await get(server, 'teal', 0)
    await fetch(`${server.origin}/api/jobs/teal/log`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: server.origin },
      body: JSON.stringify({ entries: [{ id: 'a', cells: { text: 'another' } }] }),
    })
    expect(await get(server, 'teal', 0)).toEqual(before)
  })
})
