/** The name of a weather series: a hash of everything in it, so that a plan can say which weather it used. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import type { HourlySeries } from '#core/climate'
import { writeWeatherCsv } from './write-weather-csv.ts'

/** Changes when the canonical text does, so that hashes of two forms are never taken for each other. */
const form = 'hourly series 1'

/**
 * Hash of a series, source and licence included.
 * @returns SHA-256 (FIPS 180-4), 64 hexadecimal digits, over the series as CSV in UTC under a line that names the
 * form. Writing and reading a series keeps its hash; the order of columns, quotes and offset in a file do not matter.
 */
export function seriesHash(series: HourlySeries): string {
  return bytesToHex(sha256(utf8ToBytes(`${form}\n${writeWeatherCsv(series)}`)))
}
