/** A section that is itself one map of cells. */
import type { Section } from './field.ts'
import { errorAt, type FoundProblem } from './found-problem.ts'
import { isMap } from './raw.ts'
import type { CellContext } from './read-cell.ts'
import { readCells } from './read-cells.ts'
import { equalData, share } from './share.ts'

export type OneTask = {
  readonly name: string
  readonly section: Section
  readonly raw: unknown
  readonly pointer: string
  readonly context: CellContext
  readonly unknownKeys: 'error' | 'note'
}

export type OneState = {
  readonly raw: unknown
  readonly cells: Readonly<Record<string, unknown>>
  /** A stand-in holds the place of a required cell. */
  readonly standsIn: boolean
  readonly problems: readonly FoundProblem[]
}

/** A section that is not there is one problem when it has required cells, none otherwise. */
export const readOne = (task: OneTask, older: OneState | undefined): OneState => {
  if (older && equalData(older.raw, task.raw)) return older
  const { name, section, raw, pointer } = task
  const reading = readCells({
    ...task,
    section: name,
    shape: 'one',
    fields: section.fields,
    raw: isMap(raw) ? raw : {},
  })
  const cells = { ...standIns(section), ...reading.cells }
  const problems = isMap(raw) ? reading.problems : absentProblems(section, raw, pointer)
  return { raw, cells: share(older?.cells, cells), standsIn: reading.broken, problems }
}

const absentProblems = (section: Section, raw: unknown, pointer: string): readonly FoundProblem[] => {
  if (raw !== undefined && raw !== null)
    return [errorAt(pointer, 'job.shape', { found: shapeOf(raw), accepted: 'map' }, 'key')]
  const keys = Object.keys(section.fields).filter((key) => section.fields[key]?.need === 'required')
  return keys.length === 0 ? [] : [errorAt(pointer, 'job.missingSection', { keys: keys.join(', ') }, 'key')]
}

export const shapeOf = (raw: unknown): string => (Array.isArray(raw) ? 'list' : isMap(raw) ? 'map' : 'text')

const standIns = ({ fields }: Section): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([key, { standIn }]): [string, string][] =>
      standIn === undefined ? [] : [[key, standIn]],
    ),
  )
