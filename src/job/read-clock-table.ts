/** Hours against temperature: `5C: 24h, 15C: 10h, 25C: 6h`, or one time for all, which counts at 20 °C. */
import { read } from '#units'
import type { ClockPoint } from './field.ts'
import { type ProblemData, quote } from './problem.ts'

/** A single time on a sheet is taken at the temperature for which sheets without a table are written. */
export const planningC = 20

export type ClockReading =
  | { readonly ok: true; readonly points: readonly ClockPoint[]; readonly odd: boolean }
  | { readonly ok: false; readonly code: string; readonly data: ProblemData }

/** Points by rising temperature; `odd` when a warmer point is not shorter, which some sheets really print. */
export const readClockTable = (text: string): ClockReading => {
  const pieces = split(text)
  const points: ClockPoint[] = []
  for (const piece of pieces) {
    const colon = piece.indexOf(':')
    if (colon < 0 && pieces.length > 1) return refuse('job.clockTable', piece)
    const air = colon < 0 ? undefined : read(piece.slice(0, colon).trim(), 'temperature')
    const hours = read(piece.slice(colon + 1).trim(), 'time', { sign: 'positive' })
    if (air && !air.ok)
      return air.fault.code === 'units.empty' ? refuse('job.clockTable', piece) : faulty(air.fault)
    if (!hours.ok) return faulty(hours.fault)
    points.push({ airC: air?.ok ? air.quantity.value : planningC, hours: hours.quantity.value })
  }
  points.sort((a, b) => a.airC - b.airC)
  const twice = points.find(({ airC }, index) => index > 0 && points[index - 1]?.airC === airC)
  if (twice) return { ok: false, code: 'job.clockTwice', data: { found: quote(text), airC: twice.airC } }
  return {
    ok: true,
    points,
    odd: points.some(({ hours }, index) => hours > (points[index - 1]?.hours ?? hours)),
  }
}

/** A comma parts two points only when a colon comes before the next comma, so `5C: 1,5h, 15C: 1h` are two. */
const split = (text: string): readonly string[] => text.split(/;|,(?=[^,;:]*:)/)

const refuse = (code: string, piece: string): ClockReading => ({
  ok: false,
  code,
  data: { found: quote(piece.trim()), accepted: '5C: 24h, 15C: 10h' },
})

const faulty = ({ code, data }: { readonly code: string; readonly data: ProblemData }): ClockReading => ({
  ok: false,
  code,
  data,
})
