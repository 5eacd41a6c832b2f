/** What every screen of one job is given: the document as written, its plan, and the ways to change it. */
import type { Problem, RawCells, RawDocument } from '#job'
import type { TraceEntry } from '#plan'
import type { Sees } from '#replica'
import type { Words } from '#words'
import type { Clash } from '../device/clash-box.ts'
import type { NotTaken } from '../device/document-sync.ts'
import type { GivenWeather } from '../device/keep-weather.ts'
import type { Answers, Question, ShownPlan } from '../worker/messages.ts'
import type { PlanMove } from './plan-move.ts'
import type { GivenInto } from './weather-cells.ts'
import type { Weighing } from './weighing.ts'

/** A cell of the documents: of a section of one map, or of an item of a collection. */
export type CellPlace = {
  readonly part: 'work' | 'money'
  readonly section: string
  /** Of the item, in a collection. */
  readonly item?: string
  readonly key: string
}

export type CollectionPlace = Pick<CellPlace, 'part' | 'section'>
export type ItemPlace = CollectionPlace & { readonly item: string }

export type JobEdits = {
  /** Writes a cell as the person wrote it; `undefined` clears it. */
  readonly set: (place: CellPlace, text: string | undefined) => void
  /** A new item behind `after`, or last; gives its id. */
  readonly add: (place: CollectionPlace, cells: RawCells, after?: string) => string
  /** Takes an item away; undo brings it back, and so does an edit of it on another device never. */
  readonly remove: (place: ItemPlace) => void
  /** Moves an item behind `after`, or to the front. */
  readonly move: (place: ItemPlace, after: string | undefined) => void
  /** Several edits as one step of undo. */
  readonly together: (work: (edits: JobEdits) => void) => void
}

export type JobHistory = {
  readonly canUndo: boolean
  readonly canRedo: boolean
  readonly undo: () => void
  readonly redo: () => void
}

/** Where the newest edits are kept. */
export type Kept = {
  /** `writing`: not on this device's disk yet. `device`: on it. `both`: on the server too. */
  readonly where: 'writing' | 'device' | 'both'
  /** Whether the server can be reached now. */
  readonly online: boolean
  /** Edits and entries that the server has not got. */
  readonly waiting: number
  /** Other jobs with edits that are only on this device. */
  readonly others: number
  /** The browser may not throw the data away when space is short; undefined while it is not known. */
  readonly lasting?: boolean
  /** The server runs a newer program: reload once everything is sent. */
  readonly newer: boolean
  /** What went wrong with keeping, as a code of the words. */
  readonly fault?: string
  /** Why the server does not take the newest edits, as a code of the words with its data. */
  readonly notTaken?: NotTaken
  /** The server asks for a passphrase before it takes or gives anything. */
  readonly mustSignIn: boolean
}

/** A cell of an entry of the log as written, with its id. */
export type LogLine = { readonly id: string; readonly cells: RawCells; readonly sent: boolean }

export type JobView = {
  readonly id: string
  /** Of the documents as they are kept now; money is missing for somebody who may not see it. */
  readonly raw: RawDocument
  /** Undefined until the first one is made. A later one takes its place when it is ready; stages that did not change are the same objects. */
  readonly plan?: ShownPlan
  /** What the last plans moved, newest first. */
  readonly moves: readonly PlanMove[]
  /** The plan before the last one, so that figures that moved can show what they were. */
  readonly before?: ShownPlan
  readonly trace: readonly TraceEntry[]
  /** The plan of the newest edit is still being made. */
  readonly planning: boolean
  /** Why no plan could be made, as a code of the words with its data. */
  readonly fault?: { readonly code: string; readonly data: Readonly<Record<string, unknown>> } | undefined
  readonly problems: readonly Problem[]
  /** Enough of the boat, job and place is known to plan with. */
  readonly complete: boolean
  /** Written by a newer program: shown, not changed. */
  readonly readOnly: boolean
  readonly sees: Sees
  readonly words: Words
  readonly locale: string
  readonly system: 'metric' | 'us'
  readonly timeZone: string
  /** The moment the plan is made for; moves on by itself. */
  readonly nowMs: number
  readonly log: readonly LogLine[]
  /** Immutable: a correction is a new entry. Gives the id. */
  readonly addEntry: (cells: RawCells) => string
  /** Several at once: all of them are kept or none, and one plan is made with them. */
  readonly addEntries: (all: readonly RawCells[]) => void
  readonly edits: JobEdits
  readonly history: JobHistory
  /** Values of this device that another device has written over without knowing of them, the oldest first. */
  readonly clashes: readonly Clash[]
  /** What this device wrote stands again, or what the other one did stays; either way it is settled. */
  readonly settleClash: (clash: Clash, whose: 'mine' | 'theirs') => void
  /** Number of the last change on this device and when it was made. */
  readonly change: { readonly number: number; readonly atMs?: number }
  readonly kept: Kept
  /** Offers the server what it did not take. */
  readonly offerAgain: () => void
  /** A weather that the job names, or what a logger read, as a file; undefined when it names none, or it cannot be had. */
  readonly weatherFile: (key: 'hash' | 'typicalHash' | 'loggerHash') => Promise<Uint8Array | undefined>
  /**
   * Plans with another weather from now on, a typical year behind the forecast; rejects with a code of the words when it
   * cannot be kept here.
   */
  readonly giveWeather: (
    given: GivenWeather & Pick<GivenInto, 'soleTypical'> & { readonly file: string },
  ) => Promise<void>
  /** Fits the shelter to the readings of a logger from now on; rejects with a code of the words when they cannot be kept here. */
  readonly giveLogger: (given: GivenWeather & { readonly file: string }) => Promise<void>
  /** Plans without a typical year behind the forecast. */
  readonly dropTypical: () => void
  /** The guesses that move the plan most, as far as they are tried; heard apart from the view. */
  readonly weighing: Pick<Weighing, 'listen' | 'now' | 'start'>
  /** Asks the worker: the whole plan for papers, why an hour is shut, how the plan would move. */
  readonly ask: <Q extends Question>(question: Q) => Promise<Answers[Q['kind']]>
}

/** The problem of a cell, if it has one. */
export const problemAt = (view: Pick<JobView, 'problems'>, place: CellPlace): Problem | undefined => {
  const pointer = pointerOf(place)
  const holder = pointer.slice(0, pointer.lastIndexOf('/'))
  return view.problems.find(
    (problem) =>
      problem.pointer === pointer ||
      // A cell that was never there has no place of its own.
      (problem.code === 'job.missing' && problem.pointer === holder && problem.data.field === place.key),
  )
}

/** The cell that a problem is about, if it is about one. */
export function cellOfProblem({ pointer, code, data }: Problem): CellPlace | undefined {
  const [part = '', section = '', ...path] = pointer.slice(1).split('/').map(plain)
  if (part !== 'work' && part !== 'money') return undefined
  const missing = code === 'job.missing' && path.at(-1) !== data.field ? [String(data.field)] : []
  const [first, second, ...deeper] = [...path, ...missing]
  if (first === undefined || deeper.length > 0) return undefined
  return second === undefined ? { part, section, key: first } : { part, section, item: first, key: second }
}

const plain = (key: string): string => key.replaceAll('~1', '/').replaceAll('~0', '~')

const escaped = (key: string): string => key.replaceAll('~', '~0').replaceAll('/', '~1')

export const pointerOf = ({ part, section, item, key }: CellPlace): string =>
  ['', part, section, ...(item === undefined ? [] : [item]), key].map(escaped).join('/')

/** A cell as written; empty when there is none. */
export const cellOf = ({ raw }: Pick<JobView, 'raw'>, { part, section, item, key }: CellPlace): string => {
  const map = raw[part]?.[section]
  const cells = item === undefined ? map : map?.[item]
  const cell = typeof cells === 'object' ? cells[key] : undefined
  return typeof cell === 'string' ? cell : ''
}
