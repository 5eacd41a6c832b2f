/** The reference page of the job document, made from the same tables as the reader. */
import { examplesOf } from './examples.ts'
import type { Field, Section, Sections } from './field.ts'
import { documentVersion, logSection, partSections, versionKey } from './parts.ts'

/** Markdown, ending in a line feed. */
export const referencePage = (): string =>
  [
    ...introduction,
    ...partPages('work', partSections.work),
    ...partPages('money', partSections.money),
    ...sectionPage('log', logSection),
  ].join('\n')

const introduction = [
  '# The job document',
  '',
  'Made from the tables in `src/job/`; change those, then run `UPDATE=1 npx vitest run src/job`.',
  '',
  '```yaml',
  `${versionKey}: ${documentVersion}`,
  'work:',
  '  job: {name: Teal Wren, start: 2027-04-12}',
  '  boat: {kind: open powerboat, lengthOverall: 25 ft 4 in, beam: about 2.55 m}',
  '  place: {shelter: cover, timeZone: Europe/Stockholm}',
  '  zones:',
  '    transom: {kind: transom, existing: gelcoat}',
  'money:',
  '  terms: {currency: EUR}',
  'log:',
  '  seen: {at: 2027-04-02T10:15+02:00, kind: note, text: Boat seen with the owner.}',
  '```',
  '',
  'The file is YAML or JSON. `work` holds everything about the boat and the job, `money` what things cost; `money` and',
  '`log` may be left out. A section is one map of cells, or a collection: a map from id to maps of cells. An id is made of',
  'lower-case letters, digits and hyphens, at most 64. Items stand in the order of the file, or by `order` where it is',
  'given; `gone: true` removes an item.',
  '',
  'Every cell is a text, kept exactly as written. Quantities have units, metric or US: `25 ft 4 in`, `7.72 m`, `2 mil`.',
  'With `about`, `~` or a question mark a figure counts as assumed. Put quotes round a text with a colon, such as `"2:1"`',
  'or `"5C: 24h"`. Unknown sections and cells are errors in a file.',
  '',
  'The same is in [job.schema.json](job.schema.json) for editors that know JSON Schema.',
  '',
]

const partPages = (part: string, sections: Sections): readonly string[] =>
  Object.entries(sections).flatMap(([name, section]) => sectionPage(`${part}.${name}`, section))

const sectionPage = (title: string, { shape, doc, fields }: Section): readonly string[] => [
  `## ${title}`,
  '',
  `${doc} ${shape === 'one' ? 'One map of cells.' : 'A collection.'}`,
  '',
  '| cell | needed | what | written as |',
  '|---|---|---|---|',
  ...Object.entries(fields).map(([key, field]) => row(key, field)),
  '',
]

const row = (key: string, field: Field): string =>
  `| \`${key}\` | ${field.need === 'required' ? 'yes' : ''} | ${plain(field.doc)} | ${plain(writtenAs(field))} |`

const plain = (text: string): string => text.replaceAll('|', '\\|')

const writtenAs = (field: Field): string => {
  const examples = examplesOf(field).map((example) => `\`${example}\``)
  switch (field.kind) {
    case 'choice':
      return field.choices.map((choice) => `\`${choice}\``).join(', ')
    case 'text':
      return examples.length > 0 ? `such as ${examples.join(', ')}` : 'free text'
    case 'count':
      return `whole number, ${field.least} to ${field.most}`
    case 'yesno':
      return '`yes`, `no`'
    case 'ref':
      return `id from \`${field.to}\``
    case 'refs':
      return `ids from \`${field.to}\`, separated by commas`
    case 'quantity':
      return `${dimensionName(field.dimension)}: ${examples.join(', ')}`
    default:
      return examples.join(', ')
  }
}

/** `temperatureDifference` to `temperature difference`. */
const dimensionName = (dimension: string): string =>
  dimension.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
