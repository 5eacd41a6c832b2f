/** Brings an older raw document to the newest version, one numbered step after another. */
import { documentVersion } from './parts.ts'
import type { RawDocument } from './raw.ts'

export type Migration = {
  /** Makes a document of version `from` into one of version `from + 1`. Never edited once published. */
  readonly from: number
  readonly apply: (raw: RawDocument) => RawDocument
}

/** None yet: version 1 is the first. */
export const migrations: readonly Migration[] = []

export type Migrated = {
  readonly document: RawDocument
  /** Written by a newer program: to be read, not changed. */
  readonly newer: boolean
  /** No version, or one that is no whole number from 1: read as the newest. */
  readonly unclear: boolean
}

export type MigrateOptions = {
  readonly steps: readonly Migration[]
  readonly newest: number
}

export const knownSteps: MigrateOptions = { steps: migrations, newest: documentVersion }

/** The raw document is never changed in place; one of the newest version is returned as it is. */
export const migrate = (raw: RawDocument, { steps, newest }: MigrateOptions = knownSteps): Migrated => {
  const version = versionOf(raw.hardstand)
  if (version === undefined) return { document: raw, newer: false, unclear: true }
  let document = raw
  for (let at = version; at < newest; at++) {
    const step = steps.find(({ from }) => from === at)
    if (step) document = { ...step.apply(document), hardstand: String(at + 1) }
  }
  return { document, newer: version > newest, unclear: false }
}

const versionOf = (text: unknown): number | undefined =>
  typeof text === 'string' && /^[1-9]\d{0,5}$/.test(text.trim()) ? Number(text) : undefined
