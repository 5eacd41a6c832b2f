/** Writes hours as CSV; takes the place of a weather file of our own form, and of no other file. */
import { readFile, rename, writeFile } from 'node:fs/promises'
import { readWeatherCsv, writeWeatherCsv } from '#intake'
import type { WeatherSeries } from './load-weather.ts'
import { asFault } from './read-bytes.ts'

export async function writeWeather(path: string, series: WeatherSeries): Promise<void> {
  const text = writeWeatherCsv(series)
  try {
    await writeFile(path, text, { flag: 'wx' }).catch(async (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EEXIST' || !readWeatherCsv(await readFile(path)).ok) throw error
      const partial = `${path}.part`
      await writeFile(partial, text)
      await rename(partial, path)
    })
  } catch (error) {
    throw asFault(error, path)
  }
}
