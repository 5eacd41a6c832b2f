/** One map of cells read against its table: values, stand-ins, and every problem in it. */
import type { Field, Fields } from './field.ts'
import { errorAt, type FoundProblem, noteAt } from './found-problem.ts'
import { itemRules } from './item-rules.ts'
import { nearest } from './nearest.ts'
import { itemKeys } from './parts.ts'
import { below } from './pointer.ts'
import { quote } from './problem.ts'
import { entryOf } from './raw.ts'
import { type CellContext, readCell } from './read-cell.ts'

export type CellsTask = {
  readonly section: string
  readonly shape: 'one' | 'many'
  readonly fields: Fields
  readonly raw: Readonly<Record<string, unknown>>
  readonly pointer: string
  readonly context: CellContext
  /** Unknown keys are errors in a file and notes in a shared document. */
  readonly unknownKeys: 'error' | 'note'
}

export type CellsReading = {
  readonly cells: Readonly<Record<string, unknown>>
  /** A required cell is missing or bad. */
  readonly broken: boolean
  readonly problems: readonly FoundProblem[]
}

export const readCells = (task: CellsTask): CellsReading => {
  const problems: FoundProblem[] = unknownKeys(task)
  const cells: Record<string, unknown> = {}
  let broken = false
  for (const [key, field] of Object.entries(task.fields)) {
    const value = oneCell(task, key, field, problems)
    if (value !== undefined) cells[key] = value
    else if (field.need === 'required') broken = true
  }
  const fault = Object.hasOwn(itemRules, task.section) ? itemRules[task.section]?.(cells) : undefined
  if (fault) {
    problems.push(errorAt(below(task.pointer, fault.cell), fault.code, fault.data))
    if (fault.drops === 'item') broken = true
    else delete cells[fault.cell]
  }
  return { cells, broken, problems }
}

const unknownKeys = ({ fields, raw, pointer, shape, unknownKeys: severity }: CellsTask): FoundProblem[] => {
  const own = shape === 'many' ? itemKeys : []
  const unknown = Object.keys(raw).filter(
    (key) => !Object.hasOwn(fields, key) && !(own as readonly string[]).includes(key),
  )
  return unknown.map((key) => unknownKey({ found: key, known: Object.keys(fields), pointer, severity }))
}

type Unknown = {
  readonly found: string
  readonly known: readonly string[]
  readonly pointer: string
  readonly severity: 'error' | 'note'
}

/** The problem of a key that no table has, with the key that was most likely meant. */
export const unknownKey = ({ found, known, pointer, severity }: Unknown): FoundProblem => {
  const guess = nearest(found, known)
  const data = { found: quote(found), accepted: known.join(', '), ...(guess ? { nearest: guess } : {}) }
  const at = severity === 'error' ? errorAt : noteAt
  return at(below(pointer, found), 'job.unknownKey', data, 'key')
}

const oneCell = (task: CellsTask, key: string, field: Field, problems: FoundProblem[]): unknown => {
  const raw = entryOf(task.raw, key)
  const pointer = below(task.pointer, key)
  const text = field.kind === 'yesno' && typeof raw === 'boolean' ? String(raw) : raw
  if (text === undefined || text === null || text === '') {
    if (field.need === 'required') problems.push(missing(task, key, raw === undefined))
    else if (raw !== undefined) problems.push(noteAt(pointer, 'job.emptyCell', { field: key }))
    return undefined
  }
  if (typeof text !== 'string') {
    problems.push(errorAt(pointer, 'job.notText', { field: key, found: typeof text }))
    return undefined
  }
  const reading = readCell(field, text, task.context)
  if (!reading.ok) {
    problems.push(errorAt(pointer, reading.code, { field: key, ...reading.data }))
    return undefined
  }
  if (reading.note) problems.push(noteAt(pointer, reading.note.code, { field: key, ...reading.note.data }))
  return reading.value
}

const missing = ({ pointer, section }: CellsTask, key: string, absent: boolean): FoundProblem =>
  absent
    ? errorAt(pointer, 'job.missing', { field: key, section }, 'key')
    : errorAt(below(pointer, key), 'job.missing', { field: key, section })
