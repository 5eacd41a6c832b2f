/** `GET /api/hello`: what the server speaks and what this browser may see; served to everybody. */
import { type Hello, protocol } from '#replica'
import { answer, type Route, type RouteContext } from './route.ts'

export const helloRoute = ({ app, run }: RouteContext): Route => ({
  path: '/api/hello',
  open: true,
  methods: {
    GET: async ({ sees }) =>
      answer({ protocol, app, signIn: sees === undefined, sees: sees ?? 'work', run } satisfies Hello),
  },
})
