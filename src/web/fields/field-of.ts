/** The rule of a cell, from the tables that the documents are read by. */
import { type Field, moneyFields, type Section, type Sections, workFields } from '#job'
import type { CellPlace, CollectionPlace } from '../job/job-view.ts'

const parts: Readonly<Record<'work' | 'money', Sections>> = { work: workFields, money: moneyFields }

/** Undefined where a newer program has a section that is not known here. */
export const sectionAt = ({ part, section }: CollectionPlace): Section | undefined =>
  Object.hasOwn(parts[part], section) ? parts[part][section] : undefined

export function sectionOf({ part, section }: CollectionPlace): Section {
  const found = parts[part][section]
  if (!found) throw new RangeError(`section: unknown, got "${section}", expected one of the ${part} document`)
  return found
}

export function fieldOf(place: CellPlace): Field {
  const field = sectionOf(place).fields[place.key]
  if (!field) throw new RangeError(`cell: unknown, got "${place.key}", expected one of ${place.section}`)
  return field
}
