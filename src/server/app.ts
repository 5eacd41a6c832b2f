/** The routes behind the gate, wired into one handler of requests: every fault leaves in the one shape of an error. */
import { type Context, Hono } from 'hono'
import { StoreError } from '#store'
import { isApi } from './http/gate.ts'
import { bodyOf, type Refusal, Refused, refusal } from './http/refusal.ts'
import { securityHeaders } from './http/security-headers.ts'
import { apiRoutes } from './routes/api-routes.ts'
import type { Pages } from './routes/pages.ts'
import type { Handler, Route, RouteContext } from './routes/route.ts'

type Bindings = { readonly incoming?: { readonly socket: { readonly remoteAddress?: string | undefined } } }
type AppContext = Context<{ Bindings: Bindings }>

export function createApp(context: RouteContext, pages: Pages): Hono<{ Bindings: Bindings }> {
  const app = new Hono<{ Bindings: Bindings }>()
  app.use(async (c, next) => {
    await next()
    for (const [name, value] of Object.entries(securityHeaders(c.req.header('host'))))
      c.res.headers.set(name, value)
  })
  for (const route of apiRoutes(context)) {
    for (const [method, handler] of Object.entries(route.methods))
      app.on(method, route.path, (c) => serve(c, { route, handler, context }))
    const known = Object.keys(route.methods)
    app.all(route.path, (c) => refused(notAllowed(c.req.method, known)))
  }
  app.all('*', async (c) => {
    if (isApi(c.req.path))
      return refused(
        c.req.path === '/sync'
          ? refusal(426, 'server.socketOnly', {}, { Upgrade: 'websocket' })
          : refusal(404, 'server.notFound'),
      )
    if (c.req.method !== 'GET' && c.req.method !== 'HEAD') return refused(notAllowed(c.req.method, ['GET']))
    return pages.give(c.req.raw)
  })
  app.onError((error) => refused(refusalOf(error, context)))
  return app
}

async function serve(
  c: AppContext,
  {
    route,
    handler,
    context,
  }: { readonly route: Route; readonly handler: Handler; readonly context: RouteContext },
): Promise<Response> {
  const sees = context.sessions.sessionOf(c.req.header('cookie'))?.sees
  if (sees === undefined && !route.open) return refused(refusal(401, 'server.signInFirst'))
  const address = c.env?.incoming?.socket.remoteAddress ?? 'unknown'
  return handler({ request: c.req.raw, params: c.req.param(), sees, address })
}

const notAllowed = (method: string, known: readonly string[]): Refusal => {
  const allowed = known.includes('GET') ? [...known, 'HEAD'] : known
  return refusal(405, 'server.methodNotAllowed', { method }, { Allow: allowed.join(', ') })
}

/** What a handler threw: its own refusal, a store that cannot, or a fault of the program, which is told apart. */
function refusalOf(error: unknown, { tell }: RouteContext): Refusal {
  if (error instanceof Refused) return error.refusal
  if (error instanceof StoreError) {
    const status = statusOfGiven(error)
    if (status !== undefined) return refusal(status, error.code, error.data)
    tell({ code: error.code, data: error.data })
    return refusal(503, 'server.storeFailed', { problem: error.code })
  }
  tell({
    code: 'server.ownFault',
    data: { text: error instanceof Error ? (error.stack ?? '') : String(error) },
  })
  return refusal(500, 'server.ownFault', { text: 'see where it was started' })
}

/** Undefined when it is not what was given that the store cannot take. */
const statusOfGiven = ({ code }: StoreError): number | undefined => {
  if (code.endsWith('TooLarge')) return 413
  return /^store\.bad(Name|Bytes|Cells|Cursor|Value)$/.test(code) ? 400 : undefined
}

const refused = (given: Refusal): Response =>
  new Response(bodyOf(given), {
    status: given.status,
    headers: {
      'Content-Type': 'application/json; charset=utf-8',
      'Cache-Control': 'no-store',
      ...given.headers,
    },
  })
