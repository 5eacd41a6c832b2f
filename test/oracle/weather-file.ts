/** The weather of a sample job, read line by line, and the dew point after WMO-No. 8. */
import { readFileSync } from 'node:fs'
import type { SampleName } from '../support/samples.ts'

export type WeatherLine = {
  /** Hours since 1970 UTC. */
  readonly hour: number
  readonly airC: number
  readonly humidityShare: number
  readonly windMps: number
  readonly rainMm: number
}

const folder = new URL('../../samples/', import.meta.url)

export function readWeatherLines(name: SampleName): readonly WeatherLine[] {
  const lines = readFileSync(new URL(`${name}.weather.csv`, folder), 'utf8').split('\n')
  const rows = lines.filter((line) => line !== '' && !line.startsWith('#')).map((line) => line.split(','))
  const [head, ...body] = rows
  if (head?.join() !== 'time,airC,humidityPct,windMps,rainMm,cloudPct,sunWm2')
    throw new Error(`weather: columns changed, got ${head}`)
  return body.map(([time, air, humidity, wind, rain]) => ({
    hour: Date.parse(time!) / 3_600_000,
    airC: Number(air),
    humidityShare: Number(humidity) / 100,
    windMps: Number(wind),
    rainMm: Number(rain),
  }))
}

/** Dew point over water, °C: Magnus with the constants of WMO-No. 8, Annex 4.B. */
export function wmoDewPoint(airC: number, humidityShare: number): number {
  const gamma = Math.log(humidityShare) + (17.62 * airC) / (243.12 + airC)
  return (243.12 * gamma) / (17.62 - gamma)
}
