/** `/api/jobs/:job/log`: batches of entries come in, pages of them go out behind a cursor. */
import { idPattern, type LogPage, type LogTaken } from '#replica'
import { readJson } from '../http/body.ts'
import { refuse } from '../http/refusal.ts'
import { readBatch } from './read-batch.ts'
import { type Asked, answer, type Route, type RouteContext } from './route.ts'

export const jobLogRoute = (context: RouteContext): Route => ({
  path: '/api/jobs/:job/log',
  open: false,
  methods: { GET: (asked) => page(asked, context), POST: (asked) => take(asked, context) },
})

async function page({ request, params }: Asked, { store, limits, run }: RouteContext): Promise<Response> {
  const job = jobOf(params)
  const given = new URL(request.url).searchParams.get('after') ?? '0'
  const after = /^\d{1,15}$/.test(given) ? Number(given) : refuse(400, 'server.cursorNotRead')
  // One more than a page holds says whether there is another.
  const found = await store.entriesAfter(job, { after, most: limits.pageEntries + 1 })
  const more = found.length > limits.pageEntries
  return answer({ entries: found.slice(0, limits.pageEntries), more, run } satisfies LogPage)
}

async function take({ request, params }: Asked, { store, limits, run }: RouteContext): Promise<Response> {
  const job = jobOf(params)
  const entries = readBatch(await readJson(request, limits.jsonBytes), limits)
  return answer({ sequence: await store.addEntries(job, entries), run } satisfies LogTaken)
}

function jobOf({ job = '' }: Asked['params']): string {
  return idPattern.test(job) ? job : refuse(404, 'server.notFound')
}
