/** A sample job as plain cells, read without the program's own reader: every scalar stays the text that was typed. */
import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { catalogue } from '#catalogue'
import type { SampleName } from '../support/samples.ts'
import type { OracleJob } from './jobs.ts'

export type Cells = Readonly<Record<string, string>>
export type Section = Readonly<Record<string, Cells>>

export type RawSample = {
  readonly sample: SampleName
  readonly work: Readonly<Record<string, unknown>>
  readonly money: Readonly<Record<string, unknown>>
}

const folder = new URL('../../samples/', import.meta.url)

/** The file, with the cells of the job set. */
export function readRawSample({ sample, cells }: OracleJob): RawSample {
  const text = readFileSync(new URL(`${sample}.yaml`, folder), 'utf8')
  const { work, money } = parse(text, { schema: 'failsafe' }) as Omit<RawSample, 'sample'>
  for (const [path, written] of cells) setCell(work as Record<string, unknown>, path, written)
  return { sample, work, money }
}

function setCell(map: Record<string, unknown>, [key = '', ...rest]: readonly string[], text: string): void {
  if (rest.length === 0) map[key] = text
  else {
    map[key] ??= {}
    setCell(map[key] as Record<string, unknown>, rest, text)
  }
}

/** Items of a collection by id, in the order of the file. */
export const itemsOf = (part: Readonly<Record<string, unknown>>, name: string): Section =>
  (part[name] ?? {}) as Section

export const cellsOf = (part: Readonly<Record<string, unknown>>, name: string): Cells =>
  (part[name] ?? {}) as Cells

export const idsIn = (list: string | undefined): readonly string[] =>
  (list ?? '')
    .split(',')
    .map((id) => id.trim())
    .filter((id) => id !== '')

/** A cell of a product: its own, or the one of the generic sheet it is like. */
export function sheetCell(raw: RawSample, sheet: string, cell: string): string | undefined {
  const own = itemsOf(raw.work, 'sheets')[sheet]
  if (own?.[cell] !== undefined) return own[cell]
  const generic = catalogue.sheets[(own?.like ?? '') as keyof typeof catalogue.sheets]
  return (generic?.cells as Cells | undefined)?.[cell]
}

export const limitCell = (cell: keyof typeof catalogue.limits.cells): string =>
  String(catalogue.limits.cells[cell])
