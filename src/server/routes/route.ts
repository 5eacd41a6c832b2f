/** What a route is: an address, and a function from a request to an answer for each method. */
import type { Sees, ServerRun } from '#replica'
import type { Sessions } from '../http/session.ts'
import type { Tries } from '../http/tries.ts'
import type { ServerOptions } from '../options.ts'

export type RouteContext = Pick<ServerOptions, 'store' | 'app' | 'limits' | 'nowMs' | 'tell' | 'feeds'> & {
  readonly run: ServerRun
  readonly sessions: Sessions
  readonly tries: Tries
  /** Told the cookies of somebody who signed out. */
  readonly signedOut: (cookies: string) => void
}

export type Asked = {
  readonly request: Request
  /** The parts of the address that the route names. */
  readonly params: Readonly<Record<string, string>>
  /** Undefined for somebody who has to sign in first; only open routes are asked then. */
  readonly sees: Sees | undefined
  /** Where the request came from. */
  readonly address: string
}

export type Handler = (asked: Asked) => Promise<Response>
export type Method = 'GET' | 'POST' | 'PUT'

export type Route = {
  /** As hono takes it: `/api/jobs/:job/log`. */
  readonly path: string
  /** Served to somebody who has not signed in. */
  readonly open: boolean
  readonly methods: Readonly<Partial<Record<Method, Handler>>>
}

/** An answer of the program's own talk: never kept by a browser. */
export const answer = (body: unknown, headers: Readonly<Record<string, string>> = {}): Response =>
  new Response(JSON.stringify(body), {
    headers: { 'Content-Type': 'application/json; charset=utf-8', 'Cache-Control': 'no-store', ...headers },
  })
