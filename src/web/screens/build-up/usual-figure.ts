/** What the generic sheet has for a cell, in the reader's units: the figure, and how far sources differ. */
import { catalogue } from '#catalogue'
import { type Field, sheetFields } from '#job'
import { read, write } from '#units'
import type { JobView } from '../../job/job-view.ts'

type Row = {
  readonly cells: Readonly<Record<string, string | undefined>>
  readonly sources: Readonly<Record<string, { readonly seen?: readonly [string, string] } | undefined>>
}

/** Nothing where no generic sheet is chosen or it leaves the cell out. */
export function usualFigure(
  view: Pick<JobView, 'words' | 'system' | 'locale'>,
  { like, key }: { readonly like: string; readonly key: string },
): string | undefined {
  const rows: Readonly<Record<string, Row>> = catalogue.sheets
  const row = Object.hasOwn(rows, like) ? rows[like] : undefined
  const text = row?.cells[key]
  const field: Field | undefined = (sheetFields as Readonly<Record<string, Field>>)[key]
  if (!row || text === undefined || !field || named.includes(key)) return undefined
  const shown = (figure: string) => inUnits(figure, field, view)
  const seen = row.sources[key]?.seen
  return view.words.sentence('sheetpart.usual', {
    figure: shown(text),
    isSeen: seen !== undefined,
    least: seen ? shown(seen[0]) : '',
    most: seen ? shown(seen[1]) : '',
  })
}

/** Cells of which the choice above says enough. */
const named: readonly string[] = ['name', 'like', 'family', 'role', 'source']

function inUnits(text: string, field: Field, { system, locale }: Pick<JobView, 'system' | 'locale'>): string {
  if (field.kind !== 'quantity') return text
  const reading = read(text, field.dimension)
  return reading.ok ? write(reading.quantity.value, field.dimension, { system, locale }) : text
}
