// Reads the cells of shipped tables in tests, with nothing of the document reader but the units.
import type { ClockPoint } from '#job'
import { type Dimension, read } from '#units'

/** The value in SI; NaN when the text does not read. */
export function inSi(text: string, dimension: Dimension): number {
  const reading = read(text, dimension)
  return reading.ok ? reading.quantity.value : Number.NaN
}

/** Points of a time by temperature; NaN where a part does not read. */
export function clockPoints(text: string): readonly ClockPoint[] {
  return text.split(',').map((point) => {
    const [air = '', hours = ''] = point.split(':')
    return { airC: inSi(air.trim(), 'temperature'), hours: inSi(hours.trim(), 'time') }
  })
}
