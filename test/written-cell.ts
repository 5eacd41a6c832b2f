// Reads a cell of a shipped table as the document reader would, with nothing of it but the units: a slow, plain twin.
import type { ClockPoint, Field } from '#job'
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

/** What is wrong with a text as a cell of this field; undefined when it reads. */
export function cellFault(field: Field, text: string): string | undefined {
  return reads(field, text) ? undefined : `${text} is no ${field.kind}`
}

function reads(field: Field, text: string): boolean {
  switch (field.kind) {
    case 'quantity': {
      const value = inSi(text, field.dimension)
      return (
        value >= (field.least ?? Number.NEGATIVE_INFINITY) &&
        value <= (field.most ?? Number.POSITIVE_INFINITY)
      )
    }
    case 'ratio':
      return inSi(text, 'ratio') > 0
    case 'clockTable':
      return clockPoints(text).every(({ airC, hours }) => Number.isFinite(airC) && hours > 0)
    case 'choice':
      return field.choices.includes(text)
    case 'count':
      return /^\d+$/.test(text) && Number(text) >= field.least && Number(text) <= field.most
    case 'yesno':
      return text === 'yes' || text === 'no'
    case 'text':
    case 'ref':
      return text.trim() !== ''
    default:
      return false
  }
}
