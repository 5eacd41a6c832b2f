/**
 * What the program has to say about a result: what was assumed, what is missing, what is dangerous.
 * A note carries no sentence; `words/` turns its code and data into one.
 */

/**
 * `assumed` a figure nobody gave; `missing` something that would firm the plan up; `info` worth knowing;
 * `uncovered` what the program does not work out yet; `fault` the plan cannot work as it stands;
 * `notice` to `danger` as the signal words of ANSI Z535.6.
 */
export type Severity =
  | 'info'
  | 'assumed'
  | 'missing'
  | 'uncovered'
  | 'fault'
  | 'notice'
  | 'caution'
  | 'warning'
  | 'danger'

/** SI numbers with the unit in the key (`areaM2`, `airC`, `hours`), ids and plain names; never sentences. */
export type NoteData = Readonly<Record<string, number | string | boolean>>

export type Note = {
  /** `room.what`, for example `boat.draftAssumed`; `words/` has a sentence for each. */
  readonly code: string
  readonly severity: Severity
  readonly data: NoteData
  /** Where the rule or figure comes from; `assumed` when it is common practice without a source. */
  readonly source?: string
}

/** How sure a figure is, weakest last; drawn as the line under it. */
export type Certainty = 'measured' | 'sheet' | 'typical' | 'assumed' | 'worked'
