/** The parts of a document and their sections, in the order in which they are written. */
import type { Section, Sections } from './field.ts'
import { logFields } from './log-fields.ts'
import { moneyFields } from './money-fields.ts'
import { workFields } from './work-fields.ts'

/** The newest version of the document that this program knows. */
export const documentVersion = 1

export const versionKey = 'hardstand'

/** Cells that every item of a collection may have. */
export const itemKeys = ['order', 'gone'] as const

/** Section tables of the two parts made of sections; the log is one collection. */
export const partSections: Readonly<Record<'work' | 'money', Sections>> = {
  work: workFields,
  money: moneyFields,
}

export const logSection: Section = logFields.log

export const partNames = [versionKey, 'work', 'money', 'log'] as const

export const sectionOf = (sections: Sections, name: string): Section | undefined =>
  Object.hasOwn(sections, name) ? sections[name] : undefined
