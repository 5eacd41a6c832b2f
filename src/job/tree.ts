/** A file as read, before it is known to be a job document: maps, lists and texts with their places. */

/** `at` counts UTF-16 units from the start of the text. */
export type Tree = TreeMap | TreeList | TreeText

export type TreeEntry = { readonly key: string; readonly at: number; readonly value: Tree }
export type TreeMap = { readonly kind: 'map'; readonly at: number; readonly entries: readonly TreeEntry[] }
export type TreeList = { readonly kind: 'list'; readonly at: number }
/** `empty` for `null` and for nothing at all; `text` is then empty too. */
export type TreeText = {
  readonly kind: 'text'
  readonly at: number
  readonly text: string
  readonly empty: boolean
}

/** A problem at a place in the text. */
export type TreeFault = {
  readonly code: string
  readonly at: number
  readonly pointer: string
  readonly data: Readonly<Record<string, string | number>>
}

/** No tree when the text cannot be trusted to mean what it seems to. */
export type TreeReading = { readonly tree?: Tree; readonly faults: readonly TreeFault[] }
