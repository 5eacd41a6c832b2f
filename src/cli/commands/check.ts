/** `hardstand check`: every problem of a document with its place in the file. */
import type { Command } from '../command.ts'
import { problemLines, readJob } from '../load-job.ts'
import { plainWords } from '../plain-words.ts'

export const check: Command = {
  name: 'check',
  summary: 'read a job document and list every problem with its place in the file',
  argument: { name: '<job>', doc: 'job document, or - for standard input' },
  flags: [],
  run: async ({ argument }) => {
    const { problems } = await readJob(argument)
    const errors = problems.filter((problem) => problem.severity === 'error').length
    const counts = { errors, notes: problems.length - errors }
    return {
      lines: [
        ...problemLines(argument, problems),
        plainWords.sentence('cli.checked', { file: argument, ...counts }),
      ],
      json: { ok: errors === 0, ...counts, problems },
      exitCode: errors === 0 ? 0 : 1,
    }
  },
}
