/** `hardstand new`: starts a job document from a few sizes. */
import { writeFile } from 'node:fs/promises'
import { newJob, writeJson } from '#job'
import type { Command, Flag, Flags } from '../command.ts'
import { textFlag } from '../command.ts'
import { plainWords } from '../plain-words.ts'
import { asFault } from '../read-bytes.ts'

const answers = [['name', '--name <text>', 'what the job is called']] as const

export const create: Command = {
  name: 'new',
  summary: 'start a job document from a few sizes',
  argument: { name: '<file>', doc: 'where to write it; an existing file is never overwritten' },
  flags: answers.map(([, flags, doc]): Flag => ({ flags, doc })),
  run: async ({ argument, flags }) => {
    const text = writeJson(newJob(answersOf(flags)))
    try {
      await writeFile(argument, text, { flag: 'wx' })
    } catch (error) {
      throw asFault(error, argument)
    }
    return { lines: [plainWords.sentence('cli.created', { file: argument })], json: { file: argument } }
  },
}

const answersOf = (flags: Flags) =>
  Object.fromEntries(
    answers.flatMap(([key]) => (textFlag(flags, key) === undefined ? [] : [[key, textFlag(flags, key)]])),
  )
