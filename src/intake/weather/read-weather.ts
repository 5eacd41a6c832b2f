/** Weather from any file that is read: what it is shows in its content, not in its name. */
import { decodeText } from '../decode-text.ts'
import { looksLikeEpw, readEpw } from './epw.ts'
import { isMap } from './json-file.ts'
import { looksLikeMet, readMet } from './met-forecast.ts'
import { looksLikeNwsGrid, readNwsGrid } from './nws-grid.ts'
import { looksLikeNwsHourly, readNwsHourly } from './nws-hourly.ts'
import { looksLikeOpenMeteo, readOpenMeteo } from './open-meteo.ts'
import { lookAt } from './table/look-at-table.ts'
import { readTable } from './table/read-table.ts'
import type { TableHints } from './table/table-mapping.ts'
import { isOwnForm, readWeatherText } from './weather-csv.ts'
import { refuseWeather } from './weather-grid.ts'
import { mostWeatherBytes, type WeatherRead } from './weather-read.ts'

/**
 * Reads hourly weather from EPW, from the answers of three forecast services (JSON), or from CSV with a header.
 * @param bytes the file as it came, at most 20 MB. @param hints what a person says of a table that is not in our own form:
 * its time zone, the order of day and month, its columns and their units.
 * @returns the series with notes, or errors; with an error there is no series.
 */
export function readWeather(bytes: Uint8Array, hints: TableHints = {}): WeatherRead {
  const decoded = decodeText({ bytes, mostBytes: mostWeatherBytes })
  if (!decoded.ok) return { ok: false, problems: [decoded.problem] }
  const { text } = decoded
  if (looksLikeEpw(text)) return readEpw(text)
  const first = /^\s*(\S)/.exec(text.slice(0, 1000))?.[1]
  return first === '{' || first === '[' ? readJson(text) : readTableOr(text, hints)
}

/** Our own form by its own strict reader; any other table by what it says of itself. */
function readTableOr(text: string, hints: TableHints): WeatherRead {
  const looked = isOwnForm(text) ? undefined : lookAt(text, hints)
  return looked === undefined ? readWeatherText(text) : readTable(text, looked, hints)
}

const forecasts = [
  { looksLike: looksLikeNwsGrid, read: readNwsGrid },
  { looksLike: looksLikeNwsHourly, read: readNwsHourly },
  { looksLike: looksLikeMet, read: readMet },
  { looksLike: looksLikeOpenMeteo, read: readOpenMeteo },
]

/** Whether a file is the JSON of a forecast that is read, and not JSON of another kind. */
export function isForecast(bytes: Uint8Array): boolean {
  const decoded = decodeText({ bytes, mostBytes: mostWeatherBytes })
  const file = decoded.ok ? parsed(decoded.text) : undefined
  return isMap(file) && forecasts.some(({ looksLike }) => looksLike(file))
}

/** Longest JSON that is parsed, letters: ten times a long forecast. What is parsed takes many times its length. */
const mostJson = 4_000_000
/** Deepest nesting of any answer is a tenth of it. */
const deepestJson = 100

/** Undefined when it is no JSON, or none that a service would send. */
function parsed(text: string): unknown {
  if (text.length > mostJson || nestsDeep(text)) return undefined
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** Whether brackets nest too deep, as far as one can tell without parsing: those within strings count too. */
function nestsDeep(text: string): boolean {
  let depth = 0
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at)
    if (unit === 0x5b || unit === 0x7b) depth++
    else if (unit === 0x5d || unit === 0x7d) depth--
    if (depth > deepestJson) return true
  }
  return false
}

function readJson(text: string): WeatherRead {
  if (text.length > mostJson)
    return refuseWeather('intake.fileTooLarge', { sizeBytes: text.length, mostBytes: mostJson })
  const file = parsed(text)
  if (file === undefined) return refuseWeather('intake.jsonBroken')
  const reader = isMap(file) ? forecasts.find(({ looksLike }) => looksLike(file)) : undefined
  return reader === undefined || !isMap(file) ? refuseWeather('intake.jsonUnknown') : reader.read(file)
}
