/** The JSON Schema of a job document, made from the same tables as the reader. */
import { examplesOf } from './examples.ts'
import type { Field, Section, Sections } from './field.ts'
import { limits } from './limits.ts'
import { documentVersion, logSection, partSections, versionKey } from './parts.ts'
import { idPattern } from './read-many.ts'

export type JsonSchema = Readonly<Record<string, unknown>>

/**
 * SOURCE: A. Wright, H. Andrews, B. Hutton, G. Dennis, JSON Schema: A Media Type for Describing JSON Documents, draft
 * 2020-12. It sees shapes, names and choices; what a quantity, a reference or a rule between cells needs, only the
 * reader sees.
 */
export const jsonSchema = (): JsonSchema => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: `urn:hardstand:job-document:${documentVersion}`,
  title: 'Hardstand job document',
  type: 'object',
  additionalProperties: false,
  required: [versionKey, 'work'],
  properties: {
    [versionKey]: {
      description: 'Version of the document.',
      enum: [documentVersion, String(documentVersion)],
    },
    work: partSchema(partSections.work),
    money: partSchema(partSections.money),
    log: sectionSchema(logSection, limits.logEntries),
  },
})

/** A section with required cells has to be there. */
const partSchema = (sections: Sections): JsonSchema => ({
  type: 'object',
  additionalProperties: false,
  required: Object.keys(sections).filter(
    (name) => sections[name]?.shape === 'one' && requiredIn(sections[name]).length > 0,
  ),
  properties: Object.fromEntries(
    Object.entries(sections).map(([name, section]) => [name, sectionSchema(section, limits.itemsPerSection)]),
  ),
})

const requiredIn = ({ fields }: Section): readonly string[] =>
  Object.keys(fields).filter((key) => fields[key]?.need === 'required')

const sectionSchema = (section: Section, most: number): JsonSchema =>
  section.shape === 'one'
    ? { description: section.doc, ...cellsSchema(section), required: requiredIn(section) }
    : {
        description: section.doc,
        type: 'object',
        maxProperties: most,
        propertyNames: { pattern: `^${idPattern}$` },
        additionalProperties: itemSchema(section),
      }

const cellsSchema = ({ fields }: Section): JsonSchema => ({
  type: 'object',
  additionalProperties: false,
  properties: Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, fieldSchema(field)])),
})

const gone = { description: 'The item is removed.', enum: ['true', 'false', 'yes', 'no', true, false] }
const order = { description: 'Sorts the items; the place in the file when left out.', type: 'string' }

/** A removed item needs nothing more. */
const itemSchema = (section: Section): JsonSchema => {
  const cells = cellsSchema(section)
  return {
    ...cells,
    properties: { ...(cells.properties as JsonSchema), order, gone },
    if: { properties: { gone: { enum: ['true', 'yes', true] } }, required: ['gone'] },
    // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema.
    then: {},
    else: { required: requiredIn(section) },
  }
}

const fieldSchema = (field: Field): JsonSchema => {
  const examples = examplesOf(field)
  return { description: field.doc, ...valueSchema(field), ...(examples.length > 0 ? { examples } : {}) }
}

const text = { type: 'string', maxLength: limits.text }
/** YAML reads a bare number as a number. */
const textOrNumber = { type: ['string', 'number'], maxLength: limits.text }

const valueSchema = (field: Field): JsonSchema => {
  switch (field.kind) {
    case 'choice':
      return { enum: field.choices }
    case 'text':
      return field.pattern === undefined ? textOrNumber : { ...text, pattern: `^(?:${field.pattern})$` }
    case 'count':
      return { type: ['integer', 'string'], minimum: field.least, maximum: field.most, pattern: '^\\d{1,6}$' }
    case 'yesno':
      return { enum: ['yes', 'no', 'true', 'false', true, false] }
    case 'date':
      return { ...text, pattern: '^\\d{4}-\\d{2}-\\d{2}$' }
    case 'instant':
      return { ...text, pattern: '^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}.*(Z|[+-]\\d{2}:\\d{2})$' }
    case 'ref':
      return { ...text, pattern: `^${idPattern}$` }
    case 'refs':
      return { ...text, pattern: `^${idPattern}([\\s,;]+${idPattern})*$` }
    case 'quantity':
      return field.dimension === 'share' ? textOrNumber : text
    case 'money':
    case 'ratio':
      return textOrNumber
    case 'timeOfDay':
    case 'currency':
    case 'weekdays':
    case 'clockTable':
      return text
  }
}
