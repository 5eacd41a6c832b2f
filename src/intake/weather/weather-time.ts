/** Time in a weather file: ISO 8601 with its offset from UTC, so that no time zone has to be guessed. */

export type ReadTime =
  | { readonly ok: true; readonly atMs: number }
  | { readonly ok: false; readonly why: 'offset' | 'form' }

const form =
  /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.0+)?)?\s?(?:(Z)|([+-])(\d{2}):?(\d{2})?)?$/i

/**
 * Reads `2027-04-01T06:00+02:00` or `2027-04-01T04:00Z`; seconds and a blank for the T are allowed.
 * @returns milliseconds since 1970 UTC, or whether only the offset is missing (`offset`) or it is no time at all
 * (`form`, also a day or hour that does not exist, or a year of UTC outside
 * 1900..2199).
 */
export function readTime(text: string): ReadTime {
  const parts = form.exec(text)
  if (parts === null) return { ok: false, why: 'form' }
  const [year, month, day, hour, minute, second] = parts.slice(1, 7).map((part) => Number(part ?? 0))
  const local = Date.UTC(year!, month! - 1, day, hour, minute, second)
  const real = hour! < 24 && minute! < 60 && second! < 60
  // A month or day that does not exist rolls over into another.
  if (!real || !new Date(local).toISOString().startsWith(text.slice(0, 10))) return { ok: false, why: 'form' }
  if (parts[7] !== undefined) return inReach(local)
  if (parts[8] === undefined) return { ok: false, why: 'offset' }
  const minutes = Number(parts[9]) * 60 + Number(parts[10] ?? 0)
  if (minutes > 14 * 60 || Number(parts[10] ?? 0) > 59) return { ok: false, why: 'form' }
  return inReach(local - (parts[8] === '-' ? -1 : 1) * minutes * 60_000)
}

const firstMs = Date.UTC(1900, 0, 1)
const endMs = Date.UTC(2200, 0, 1)

/** Whether a moment lies in the years that are read and written, by UTC: what is taken can be written and read again. */
export const isInReach = (atMs: number): boolean => atMs >= firstMs && atMs < endMs

const inReach = (atMs: number): ReadTime =>
  isInReach(atMs) ? { ok: true, atMs } : { ok: false, why: 'form' }

/** Writes a moment with an offset: `2027-04-01T06:00+02:00`, `Z` for none. */
export function writeTime(atMs: number, offsetMinutes: number): string {
  const local = new Date(atMs + offsetMinutes * 60_000).toISOString()
  const clock = local.endsWith(':00.000Z') ? local.slice(0, 16) : local.slice(0, 19)
  if (offsetMinutes === 0) return `${clock}Z`
  const minutes = Math.abs(offsetMinutes)
  const two = (value: number) => String(value).padStart(2, '0')
  return `${clock}${offsetMinutes < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`
}
