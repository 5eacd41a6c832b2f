/** Reads product sheets from JSON or a table: bounded, total, every cell kept as it was written. */
import papaparse from 'papaparse'
import type { RawItems } from '#job'
import { decodeText } from '../decode-text.ts'
import { nearestName } from '../nearest-name.ts'
import { addProblem, type Problem, type ProblemList, problemList, shown, tellProblems } from '../problem.ts'
import { type SheetFile, type SheetKeys, type SheetSection, sheetSections } from './sheet-file.ts'
import { rowColumns, unguarded } from './write-sheets.ts'

export const mostSheetBytes = 2 ** 20
const MOST_ROWS = 2000
const MOST_CELL = 2000

export type SheetsRead =
  | { readonly ok: true; readonly file: SheetFile; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * @param bytes the file. @param keys the cells that a job knows; others are told and left out.
 * @returns sheets, windows and thinners as raw cells; not taken where no sheet is in it.
 */
export function readSheets(bytes: Uint8Array, keys: SheetKeys): SheetsRead {
  const decoded = decodeText({ bytes, mostBytes: mostSheetBytes })
  if (!decoded.ok) {
    const { code, data } = decoded.problem
    return refused({ code: unread[code] ?? 'intake.sheetsBinary', severity: 'error', data })
  }
  const list = problemList()
  const rows = /^\s*[[{]/.test(decoded.text) ? jsonRows(decoded.text, list) : csvRows(decoded.text, list)
  const file = fileOf(rows, { keys, list })
  const problems = tellProblems([list], { code: 'intake.sheetsMore', severity: 'note' })
  if (problems.some(({ severity }) => severity === 'error')) return { ok: false, problems }
  if (Object.keys(file.sheets).length === 0)
    return { ok: false, problems: [...problems, { code: 'intake.sheetsNone', severity: 'error', data: {} }] }
  return { ok: true, file, problems }
}

const unread: Readonly<Record<string, string>> = {
  'intake.fileTooLarge': 'intake.sheetsTooLarge',
  'intake.empty': 'intake.sheetsNone',
}

const refused = (problem: Problem): SheetsRead => ({ ok: false, problems: [problem] })

type Row = {
  readonly section: string
  readonly id: string
  readonly cells: readonly (readonly [key: string, text: unknown])[]
  readonly line?: number
}

const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

function jsonRows(text: string, list: ProblemList): readonly Row[] {
  let parsed: unknown
  try {
    parsed = JSON.parse(text)
  } catch {
    addProblem(list, { code: 'intake.sheetsJson', severity: 'error', data: {} })
    return []
  }
  if (!isMap(parsed)) return []
  // A whole job document holds its sheets one level down.
  const holder = isMap(parsed.work) ? parsed.work : parsed
  return sheetSections.flatMap((section) => {
    const items = Object.hasOwn(holder, section) ? holder[section] : undefined
    if (!isMap(items)) return []
    return Object.entries(items).flatMap(([id, cells]): readonly Row[] =>
      isMap(cells) && !('gone' in cells) ? [{ section, id, cells: Object.entries(cells) }] : [],
    )
  })
}

function csvRows(text: string, list: ProblemList): readonly Row[] {
  const { data, errors } = papaparse.parse<string[]>(text, {
    skipEmptyLines: 'greedy',
    preview: MOST_ROWS + 2,
  })
  for (const { code, row } of errors)
    if (code === 'MissingQuotes' || code === 'InvalidQuotes')
      addProblem(list, { code: 'intake.sheetsQuotes', severity: 'error', line: (row ?? 0) + 1, data: {} })
  const [head = [], ...rows] = data
  const columns = head.map((name) => name.trim())
  const [section, id] = rowColumns.map((name) => columns.indexOf(name)) as [number, number]
  if (!columns.includes('name') && id < 0) {
    addProblem(list, { code: 'intake.sheetsHead', severity: 'error', line: 1, data: {} })
    return []
  }
  return rows.map((fields, index): Row => {
    const line = index + 2
    return {
      section: section < 0 ? 'sheets' : (fields[section] ?? '').trim() || 'sheets',
      id: (id < 0 ? '' : (fields[id] ?? '').trim()) || `row-${line}`,
      line,
      cells: columns.flatMap((key, at) =>
        at === section || at === id || key === '' ? [] : [[key, unguarded(fields[at] ?? '')] as const],
      ),
    }
  })
}

type Reading = { readonly keys: SheetKeys; readonly list: ProblemList }

function fileOf(rows: readonly Row[], reading: Reading): SheetFile {
  const items = new Map<SheetSection, [string, Readonly<Record<string, string>>][]>()
  const told = new Set<string>()
  if (rows.length > MOST_ROWS)
    addProblem(reading.list, { code: 'intake.sheetsRows', severity: 'error', data: { most: MOST_ROWS } })
  for (const row of rows.slice(0, MOST_ROWS)) {
    const section = sheetSections.find((one) => one === row.section)
    if (!section) {
      const data = { found: shown(row.section) }
      addProblem(reading.list, { code: 'intake.sheetsSection', severity: 'note', ...lineOf(row), data })
      continue
    }
    const cells = cellsOf(row, { ...reading, section, told })
    if (Object.keys(cells).length > 0) items.set(section, [...(items.get(section) ?? []), [row.id, cells]])
  }
  const [sheets, windows, thinners] = sheetSections.map((section) => onceEach(items.get(section) ?? [])) as [
    RawItems,
    RawItems,
    RawItems,
  ]
  return { sheets, windows, thinners }
}

const lineOf = ({ line }: Row) => (line === undefined ? {} : { line })

/** Own entries only: a key such as `__proto__` is none of the cells that a job knows. */
function cellsOf(
  row: Row,
  { keys, section, told, list }: Reading & { readonly section: SheetSection; readonly told: Set<string> },
): Readonly<Record<string, string>> {
  const known = keys[section]
  const cells = row.cells.flatMap(([key, value]): readonly (readonly [string, string])[] => {
    if (value === '' || value === null || key === 'order') return []
    if (!known.includes(key)) {
      // A column of a table belongs to any of the sections; one that belongs to none is told once.
      const elsewhere = row.line !== undefined && sheetSections.some((one) => keys[one].includes(key))
      if (elsewhere || told.has(`${section}.${key}`)) return []
      told.add(`${section}.${key}`)
      const like = nearestName(key, known)
      addProblem(list, {
        code: 'intake.sheetsColumn',
        severity: 'note',
        data: { found: shown(key), isLike: like !== undefined, like: like ?? '' },
      })
      return []
    }
    const text = typeof value === 'number' || typeof value === 'boolean' ? String(value) : value
    if (typeof text !== 'string' || text.length > MOST_CELL) {
      addProblem(list, { code: 'intake.sheetsCell', severity: 'note', ...lineOf(row), data: { key } })
      return []
    }
    return [[key, text.trim()]]
  })
  return Object.fromEntries(cells)
}

/** Two rows of one id are two items: the second is called after the first, so that nothing is lost. */
function onceEach(rows: readonly (readonly [string, Readonly<Record<string, string>>])[]): RawItems {
  const items = new Map<string, Readonly<Record<string, string>>>()
  for (const [id, cells] of rows) {
    let name = id
    for (let nr = 2; items.has(name); nr++) name = `${id}-${nr}`
    items.set(name, cells)
  }
  return Object.fromEntries(items)
}
