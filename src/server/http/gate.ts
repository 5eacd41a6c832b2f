/**
 * The gate before every route and before the socket: a page of another origin gets past it neither to read nor to
 * write, on loopback too. It knows requests only by their method, address and headers.
 */
import type { IncomingHttpHeaders } from 'node:http'
import type { HostNames } from './host-names.ts'
import { type Refusal, refusal, shown } from './refusal.ts'

export type AskedRequest = {
  readonly method?: string | undefined
  readonly url?: string | undefined
  readonly headers: IncomingHttpHeaders
}

const reading = ['GET', 'HEAD']
const writing = ['POST', 'PUT']

/** Undefined lets the request through. */
export function refusedAtGate(
  request: AskedRequest,
  { names, socket }: { readonly names: HostNames; readonly socket: boolean },
): Refusal | undefined {
  const { method = '', url = '', headers } = request
  const host = headers.host ?? ''
  if (!names.allows(host)) return refusal(403, 'server.hostNotAllowed', { host: shown(host) })
  const known = socket ? ['GET'] : [...reading, ...writing]
  if (!known.includes(method))
    return refusal(405, 'server.methodNotAllowed', { method: shown(method) }, { Allow: known.join(', ') })
  // A proxy's form of an address, or none at all.
  if (!url.startsWith('/')) return refusal(400, 'server.addressNotRead')
  return refusedOrigin(request, { needed: socket || writing.includes(method) })
}

/**
 * A browser names the origin of every page that writes or opens a socket, and of every page of another origin that
 * reads with a script. So what writes must name this one; a reader without one is no script of another origin, unless
 * the browser says that it is, and then only a person's step to an address is let through.
 */
function refusedOrigin(
  { url = '', headers }: AskedRequest,
  { needed }: { readonly needed: boolean },
): Refusal | undefined {
  const { origin } = headers
  const host = String(headers.host).toLowerCase()
  const own = origin === `http://${host}` || origin === `https://${host}`
  if (origin !== undefined && !own) return refusal(403, 'server.originNotAllowed', { origin: shown(origin) })
  if (needed && !own) return refusal(403, 'server.originMissing')
  const site = headers['sec-fetch-site']
  const fromHere = site === undefined || site === 'same-origin' || site === 'none'
  const step = headers['sec-fetch-mode'] === 'navigate' && headers['sec-fetch-dest'] === 'document'
  if (fromHere || (step && !isApi(url))) return undefined
  return refusal(403, 'server.originNotAllowed', { origin: shown(String(site)) })
}

/** Whether an address is one of the program's own talk, not of a page. */
export const isApi = (path: string): boolean => /^\/(api|sync)(?![\w.-])/i.test(path)
