// A weather service on loopback that gives a recorded answer to whatever is asked.
import { readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'

export type WeatherService = {
  readonly origin: string
  readonly asked: string[]
  readonly close: () => Promise<void>
}

/** @param name file of `test/files/weather`. */
export async function startWeatherService(name: string): Promise<WeatherService> {
  const answer = readFileSync(new URL(`../files/weather/${name}`, import.meta.url))
  const asked: string[] = []
  const server = createServer((request, response) => {
    asked.push(request.url ?? '')
    response.end(answer)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    asked,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections()
        server.close(() => resolve())
      }),
  }
}
