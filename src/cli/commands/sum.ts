/** `hardstand sum`: the ten quick sums, each with its way, its notes and its sources. */
import { runSum, type SumAnswer, SumError, type SumField, type SumResult, sums } from '#sums'
import { createWords, type Words } from '#words'
import type { Answer, Command, Flags } from '../command.ts'
import { textFlag } from '../command.ts'
import { CliFault } from '../fault.ts'
import { plainWords } from '../plain-words.ts'
import { section, table, wrap } from '../views/table.ts'

const flagOf = (field: SumField) => ({
  flags: `--${kebab(field.name)} <${field.dimension === 'text' ? 'text' : 'quantity'}>`,
  doc: `${field.doc.replace(/\.$/, '')}, for example "${field.example}"${field.required ? '' : field.default === undefined ? ' (optional)' : ` (${field.default} when left out)`}`,
})

const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)

/** One command a sum, under `hardstand sum`. */
export const sumCommands: readonly Command[] = Object.values(sums).map((sum) => ({
  name: sum.id,
  summary: sum.doc,
  flags: [...sum.inputs.map(flagOf), { flags: '--units <system>', doc: 'metric or us' }],
  run: async ({ flags }) => answer(sum.id, sum.inputs, flags),
}))

function answer(id: string, inputs: readonly SumField[], flags: Flags): Answer {
  const words = createWords({ locale: 'en-GB', system: systemOf(flags) })
  const texts = Object.fromEntries(
    inputs.flatMap((field) => {
      const text = textFlag(flags, field.name)
      return text === undefined ? [] : [[field.name, text]]
    }),
  )
  const found = worked(id, texts)
  return { lines: answerLines(found, words), json: answerJson(found) }
}

function systemOf(flags: Flags): 'metric' | 'us' {
  const system = textFlag(flags, 'units') ?? 'metric'
  if (system === 'metric' || system === 'us') return system
  throw new CliFault([plainWords.sentence('cli.badUnits', { text: system })], 2)
}

function worked(id: string, texts: Readonly<Record<string, string>>): SumAnswer {
  try {
    return runSum(id, texts)
  } catch (error) {
    if (error instanceof SumError) throw new CliFault([plainWords.sentence(error.code, error.data)])
    throw error
  }
}

function answerLines(found: SumAnswer, words: Words): readonly string[] {
  const results = table(
    found.results.map((result) => [words.label(`result.${result.key}`), valueText(result, words)]),
    ['left', 'right'],
  )
  return [
    ...results,
    ...section(
      words.label('heading.how'),
      found.how.flatMap((line) => wrap(words.sentence(line.code, line.data), '  ')),
    ),
    ...section(
      words.label('heading.notes'),
      found.notes.flatMap((note) =>
        wrap(`${words.label(`severity.${note.severity}`)}: ${words.sentence(note.code, note.data)}`, '  '),
      ),
    ),
    ...section(words.label('heading.source'), found.sources),
  ]
}

/** A sum is asked for to be copied down: finer than the plan shows, temperatures to the tenth. */
const fineness = (key: string) =>
  /[a-z][CK]$/.test(key) ? { decimals: 1 } : { digits: key === 'thicknessMm' ? 5 : 4 }

function valueText({ key, value }: SumResult, words: Words): string {
  if (typeof value === 'boolean') return words.label(value ? 'yes' : 'no')
  if (typeof value === 'number') return words.figure(key, value, {}, fineness(key))
  if (typeof value === 'string') return words.label(`value.${value}`)
  const items: readonly (number | string)[] = value
  return items
    .map((item) =>
      typeof item === 'number' ? words.figure(key, item, {}, fineness(key)) : words.label(`value.${item}`),
    )
    .join(', ')
}

const answerJson = (found: SumAnswer) => ({
  ...Object.fromEntries(found.results.map((result) => [result.key, result.value])),
  how: found.how,
  notes: found.notes,
  sources: found.sources,
})
