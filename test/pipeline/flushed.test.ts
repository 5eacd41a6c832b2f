// Under strace: whatever the server acknowledges, on the socket or over HTTP, is flushed to the disk before.
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { canTrace, readFlushTrace, traced } from '../support/flush-trace.ts'
import { openPage, until } from '../support/page.ts'
import { freePort, serve } from '../support/served.ts'
import { inFolder } from '../support/stores.ts'

const edits = 40
const entries = 20
const job = 'teal-wren'

/** On the socket, `name` and that it is kept; over HTTP, the sequence of a batch. */
const acknowledgement = new RegExp(String.raw`(?:(work:${job})\\10\\1"|\{\\"sequence\\":(\d+))`)

it.skipIf(!canTrace)(
  `strace shows a flush before each of ${edits + entries} acknowledgements of the whole server (needs strace)`,
  { timeout: 120_000 },
  () =>
    inFolder(async (folder) => {
      const trace = join(folder, 'trace')
      const port = await freePort()
      const served = serve({ port, folder, under: traced(trace) })
      const page = openPage(port)
      try {
        await until(served.output, () => served.output().includes('http://'), 60_000)
        const shared = page.share(`work:${job}`)
        await until('open', shared.kept)
        // The document was empty, and said so: that was acknowledged, and nothing had to be written for it.
        const before = (await traceSoFar(trace)).length
        for (let at = 0; at < edits; at += 1) {
          shared.doc.getMap('boat').set('name', `Teal ${at}`)
          await until(`edit ${at}`, shared.kept)
          if (at % (edits / entries) === 0) await postEntry(port, `entry${at}`)
        }
        const since = (await traceSoFar(trace)).slice(before)
        const wal = join(folder, 'hardstand.db-wal')
        const found = readFlushTrace(since, { wal, acknowledgement })
        expect(found).toEqual({ acknowledged: edits + entries, unflushed: [] })
      } finally {
        await page.close()
        served.child.kill('SIGTERM')
        await served.ended
      }
    }),
)

/** What strace saw of the last acknowledgement may reach its file a moment later than the page. */
async function traceSoFar(path: string): Promise<string> {
  await new Promise((resolve) => setTimeout(resolve, 300))
  return readFile(path, 'utf8')
}

async function postEntry(port: number, id: string): Promise<void> {
  const origin = `http://127.0.0.1:${port}`
  const answer = await fetch(`${origin}/api/jobs/${job}/log`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin },
    body: JSON.stringify({ entries: [{ id, cells: { text: 'Sanded.' } }] }),
  })
  expect(answer.status).toBe(200)
}
