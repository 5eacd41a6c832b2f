import { afterEach, expect, it, vi } from 'vitest'
import { openWeatherOffers } from './weather-offers.ts'

afterEach(() => vi.unstubAllGlobals())

/** A server that has what is listed, and a device that has nothing. */
function offersBeside(there: readonly string[]) {
  vi.stubGlobal('fetch', async (path: string) => {
    const ok = there.some((hash) => path.endsWith(hash))
    return { ok, status: ok ? 200 : 500 }
  })
  return openWeatherOffers({ get: async () => undefined } as never, 2)
}

it('a job waits for the server until every weather it names is there', async () => {
  const offers = offersBeside(['one', 'two'])
  const told = vi.fn()
  offers.listen(told)
  expect(offers.waiting()).toBe(0)
  await offers.offer(['one', undefined])
  expect(offers.waiting()).toBe(0)
  await offers.offer(['one', 'two'])
  expect(offers.waiting()).toBe(0)
  expect(told).toHaveBeenCalledTimes(2)
  offers.away()
  expect(offers.waiting()).toBeUndefined()
})

it('one of two that is not there is waited for', async () => {
  const offers = offersBeside(['one'])
  await offers.offer(['one', 'two'])
  expect(offers.waiting()).toBeUndefined()
  await offers.offer(['one', undefined])
  expect(offers.waiting()).toBe(0)
})
