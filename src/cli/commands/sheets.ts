/** `hardstand sheets`: the product sheets of a job as a file to pass on, or a job with sheets of a file added. */
import {
  type Problem,
  readSheets,
  type SheetFile,
  sheetSections,
  sheetsOnly,
  writeSheetsCsv,
  writeSheetsJson,
} from '#intake'
import { type RawItems, type RawSection, sheetKeys, writeJson } from '#job'
import { type Answer, type Command, textFlag } from '../command.ts'
import { CliFault } from '../fault.ts'
import { type LoadedJob, loadJob } from '../load-job.ts'
import { plainWords } from '../plain-words.ts'
import { readBytes } from '../read-bytes.ts'

export const sheets: Command = {
  name: 'sheets',
  summary: 'product sheets of a job as a file, or a job with sheets added from one',
  argument: { name: '<job>', doc: 'job document, or - for standard input' },
  flags: [
    { flags: '--csv', doc: 'as a table for a spreadsheet; JSON when left out' },
    { flags: '--only <ids>', doc: 'only these products, by their ids with commas between' },
    { flags: '--add <file>', doc: 'print the job with the sheets of this JSON or CSV file added' },
  ],
  run: async ({ argument, flags }) => {
    const job = await loadJob(argument)
    const file = textFlag(flags, 'add')
    if (file !== undefined) return added(job, file)
    const all = sheetFileOf(job)
    const only = textFlag(flags, 'only')
      ?.split(',')
      .map((id) => id.trim())
    const unknown = only?.filter((id) => !Object.hasOwn(all.sheets, id)) ?? []
    if (unknown.length > 0)
      throw new CliFault([plainWords.sentence('cli.sheetUnknown', { found: unknown.join(', ') })])
    const wanted = only ? sheetsOnly(all, only) : all
    const text = flags.csv === true ? writeSheetsCsv(wanted, sheetKeys) : writeSheetsJson(wanted)
    return { lines: linesOf(text), json: JSON.parse(writeSheetsJson(wanted)) }
  },
}

const linesOf = (text: string): readonly string[] => text.replace(/\r?\n$/, '').split(/\r?\n/)

const itemsOf = (section: RawSection | undefined): RawItems =>
  Object.fromEntries(
    Object.entries(section ?? {}).flatMap(([id, cells]) =>
      typeof cells === 'object' && !('gone' in cells) ? [[id, cells] as const] : [],
    ),
  )

const sheetFileOf = ({ raw: { work } }: LoadedJob): SheetFile => ({
  sheets: itemsOf(work.sheets),
  windows: itemsOf(work.windows),
  thinners: itemsOf(work.thinners),
})

/** What has an id of the job gets another; what belongs to it goes along. */
async function added(job: LoadedJob, path: string): Promise<Answer> {
  const read = readSheets(await readBytes(path), sheetKeys)
  if (!read.ok) throw new CliFault(read.problems.map((problem) => lineOf(path, problem)))
  const { work } = job.raw
  const names = new Map<string, string>()
  const sections = sheetSections.map((section) => {
    const there = { ...work[section] }
    for (const [id, cells] of Object.entries(read.file[section])) {
      const name = freeName(id, there)
      if (section === 'sheets') names.set(id, name)
      there[name] = 'sheet' in cells ? { ...cells, sheet: names.get(cells.sheet) ?? cells.sheet } : cells
    }
    return [section, there] as const
  })
  const filled = sections.filter(([, items]) => Object.keys(items).length > 0)
  const document = { ...job.raw, work: { ...work, ...Object.fromEntries(filled) } }
  const text = writeJson(document)
  return {
    lines: linesOf(text),
    json: JSON.parse(text),
    faults: read.problems.map((problem) => lineOf(path, problem)),
  }
}

function freeName(id: string, taken: Readonly<Record<string, unknown>>): string {
  let name = id
  for (let nr = 2; Object.hasOwn(taken, name); nr++) name = `${id}-${nr}`
  return name
}

const lineOf = (path: string, { line, code, data }: Problem): string =>
  `${path}${line === undefined ? '' : `:${line}`}: ${plainWords.sentence(code, data)}`
