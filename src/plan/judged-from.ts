/** How far off a finish is judged, by the standard the owner chose. */
import { catalogue, catalogueFields, type FinishStandard } from '#catalogue'
import { type Figure, readCell } from '#job'

/** In m; undefined for a standard whose row cannot be read. `tidy` where nobody chose. */
export function judgedFromM(finish: FinishStandard = 'tidy'): number | undefined {
  const text = catalogue.finishStandards[finish].cells.judgedFrom ?? ''
  const reading = readCell(catalogueFields.finishStandards.judgedFrom, text, { currency: undefined })
  return reading.ok ? (reading.value as Figure).value : undefined
}
