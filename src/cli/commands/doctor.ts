/** `hardstand doctor`: re-reads what the program ships and the documents given to it, and says what is wrong. */
import { readdir } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { type Command, textFlag } from '../command.ts'
import { CliFault } from '../fault.ts'
import { problemLines, readJob } from '../load-job.ts'
import { weatherFor } from '../load-weather.ts'
import { plainWords } from '../plain-words.ts'
import { dataFolder } from '../serving/data-folder.ts'
import { doctorData } from './doctor-data.ts'

export const samplesFolder = fileURLToPath(new URL('../../../samples/', import.meta.url))

export const doctor: Command = {
  name: 'doctor',
  summary: 're-read the sample jobs, or the document given, with their weather, and say what is wrong',
  argument: { name: '[job]', doc: 'job document; the sample jobs when left out' },
  flags: [{ flags: '--data <folder>', doc: 'examine what a server keeps there instead' }],
  run: async ({ argument, flags }) => {
    const data = textFlag(flags, 'data')
    if (data !== undefined) return doctorData(dataFolder(data))
    const files = argument === '' ? await sampleFiles() : [argument]
    const reports = await Promise.all(files.map(examine))
    const bad = reports.filter((report) => report.faults.length > 0)
    return {
      lines: [
        ...reports.flatMap((report) => [
          plainWords.sentence(report.faults.length === 0 ? 'cli.sound' : 'cli.unsound', {
            file: report.file,
          }),
          ...report.faults.map((line) => `  ${line}`),
        ]),
        plainWords.sentence('cli.doctorScope'),
      ],
      json: { ok: bad.length === 0, documents: reports },
      exitCode: bad.length === 0 ? 0 : 1,
    }
  },
}

const sampleFiles = async (): Promise<readonly string[]> =>
  (await readdir(samplesFolder))
    .filter((name) => name.endsWith('.yaml') || name.endsWith('.json'))
    .sort()
    .map((name) => `${samplesFolder}${name}`)

type Report = { readonly file: string; readonly faults: readonly string[] }

async function examine(file: string): Promise<Report> {
  try {
    const job = await readJob(file)
    const errors = job.problems.filter((problem) => problem.severity === 'error')
    if (errors.length > 0 || !job.projected || !job.raw || !job.words)
      return { file, faults: problemLines(file, errors) }
    await weatherFor(
      { ...job, projected: job.projected, raw: job.raw, words: job.words },
      { path: undefined, typical: undefined, logger: undefined, gaps: false },
    )
    return { file, faults: [] }
  } catch (error) {
    if (error instanceof CliFault) return { file, faults: error.lines }
    throw error
  }
}
