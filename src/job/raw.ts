/** A job document as it is kept: sections of maps of strings, each cell exactly as the person wrote it. */

/** One map of cells. `order` and `gone` may stand in any item of a collection. */
export type RawCells = Readonly<Record<string, string>>
/** A collection: id to cells. */
export type RawItems = Readonly<Record<string, RawCells>>
/** Unknown sections are kept too, and may mix both. */
export type RawSection = Readonly<Record<string, string | RawCells>>
export type RawPart = Readonly<Record<string, RawSection>>

export type RawDocument = {
  /** Version of the document, as written. */
  readonly hardstand: string
  readonly work: RawPart
  /** Left out for a person who may not see prices. */
  readonly money?: RawPart
  readonly log?: RawItems
}

/** A map, as against a list, a text or nothing; shared documents hold whatever a faulty writer put there. */
export const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** An own entry, so that `constructor` or `__proto__` in a document never reaches the prototype. */
export const entryOf = (map: Readonly<Record<string, unknown>>, key: string): unknown =>
  Object.hasOwn(map, key) ? map[key] : undefined
