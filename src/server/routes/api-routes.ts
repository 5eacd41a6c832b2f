/** Every route of the server's own talk, in the order of the docs; the pages and the socket stand apart. */
import { forecastRoute } from './forecast.ts'
import { helloRoute } from './hello.ts'
import { jobLogRoute } from './job-log.ts'
import type { Route, RouteContext } from './route.ts'
import { signInRoute, signOutRoute } from './sign-in.ts'
import { weatherRoute } from './weather.ts'

export const apiRoutes = (context: RouteContext): readonly Route[] =>
  [helloRoute, signInRoute, signOutRoute, jobLogRoute, weatherRoute, forecastRoute].map((route) =>
    route(context),
  )
