/** `POST /api/sign-in` and `POST /api/sign-out`: a passphrase for a cookie, and the cookie forgotten. */
import { type Hello, protocol } from '#replica'
import { isMap, readJson } from '../http/body.ts'
import { refuse } from '../http/refusal.ts'
import { type Asked, answer, type Route, type RouteContext } from './route.ts'

export const signInRoute = (context: RouteContext): Route => ({
  path: '/api/sign-in',
  open: true,
  methods: { POST: (asked) => signIn(asked, context) },
})

/** A passphrase and the braces around it. */
const mostBytes = 4096

async function signIn(
  { request, address }: Asked,
  { app, run, sessions, tries }: RouteContext,
): Promise<Response> {
  const body = await readJson(request, mostBytes)
  const passphrase = isMap(body) ? body.passphrase : undefined
  if (typeof passphrase !== 'string') return refuse(400, 'server.bodyNotUnderstood', { at: 'passphrase' })
  const seconds = tries.waitSeconds(address)
  if (seconds > 0) refuse(429, 'server.tooManyTries', { seconds }, { 'Retry-After': String(seconds) })
  if (!sessions.closed) refuse(400, 'server.noPassphrase')
  const sees = sessions.opened(passphrase)
  if (sees === undefined) {
    tries.failed(address)
    return refuse(401, 'server.passphraseWrong')
  }
  tries.succeeded(address)
  const secure = request.headers.get('origin')?.startsWith('https:') === true
  return answer({ protocol, app, signIn: false, sees, run } satisfies Hello, {
    'Set-Cookie': sessions.cookie(sees, { secure }),
  })
}

export const signOutRoute = ({ sessions, signedOut }: RouteContext): Route => ({
  path: '/api/sign-out',
  open: true,
  methods: {
    POST: async ({ request }) => {
      await readJson(request, mostBytes)
      const cookies = request.headers.get('cookie')
      if (sessions.closed && cookies !== null) signedOut(cookies)
      return answer({}, { 'Set-Cookie': sessions.noCookie })
    },
  },
})
