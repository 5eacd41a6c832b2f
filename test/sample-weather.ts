// The weather of the sample jobs: which kind, place, span and seed each file was made from.
import { fileURLToPath } from 'node:url'
import type { InventedWeather } from '#core/climate'
import { inventWeather } from '#core/climate'
import { writeWeatherCsv } from '#intake'

const degree = Math.PI / 180

export type SampleWeather = {
  readonly name: string
  /** Clock at the place, minutes east of UTC, one for the whole file. */
  readonly offsetMinutes: number
  readonly of: InventedWeather
}

export const sampleWeather: readonly SampleWeather[] = [
  {
    name: 'open-powerboat',
    offsetMinutes: 120,
    of: {
      kind: 'lake spring',
      latitude: 59.4 * degree,
      longitude: 17 * degree,
      startMs: Date.parse('2027-04-01T00:00+02:00'),
      days: 100,
      seed: 5,
    },
  },
  {
    name: 'deck-only',
    offsetMinutes: -240,
    of: {
      kind: 'town summer',
      latitude: 41 * degree,
      longitude: -74 * degree,
      startMs: Date.parse('2027-05-28T00:00-04:00'),
      days: 75,
      seed: 1,
    },
  },
  {
    name: 'cruiser-topsides',
    offsetMinutes: 60,
    of: {
      kind: 'coast autumn',
      latitude: 50.5 * degree,
      longitude: -4 * degree,
      startMs: Date.parse('2027-08-28T00:00+01:00'),
      days: 100,
      seed: 2,
    },
  },
]

export function sampleWeatherText({ of, offsetMinutes }: SampleWeather): string {
  return writeWeatherCsv(inventWeather(of), offsetMinutes)
}

/** Path of the committed file. */
export function sampleWeatherFile({ name }: SampleWeather): string {
  return fileURLToPath(new URL(`../samples/${name}.weather.csv`, import.meta.url))
}
