/** Quantities of one item as they are written, in SI; undefined where there is none or it cannot be read. */
import { readCell } from '#job'
import { fieldOf } from '../../../fields/field-of.ts'
import { cellOf, type ItemPlace, type JobView } from '../../../job/job-view.ts'

export type ReadFigure = { readonly value: number; readonly certainty: 'measured' | 'assumed' }

export const cellReader =
  (view: Pick<JobView, 'raw'>, place: ItemPlace) =>
  (key: string): ReadFigure | undefined => {
    const at = { ...place, key }
    const text = cellOf(view, at)
    const reading = text === '' ? undefined : readCell(fieldOf(at), text, { currency: undefined })
    return reading?.ok ? (reading.value as ReadFigure) : undefined
  }
