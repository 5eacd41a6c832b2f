/** `hardstand new`: starts a job document from a few sizes, checked before it is written. */
import { writeFile } from 'node:fs/promises'
import { catalogueIds } from '#catalogue'
import { type NewJobAnswers, newJob, project, writeJson } from '#job'
import { type Command, type Flag, type Flags, textFlag } from '../command.ts'
import { CliFault } from '../fault.ts'
import { problemLines } from '../load-job.ts'
import { plainWords } from '../plain-words.ts'
import { asFault } from '../read-bytes.ts'

type Question = { readonly flags: string; readonly doc: string; readonly fallback?: () => string }

/** What is asked, in order; what has a fallback need not be answered. */
const questions = {
  name: { flags: '--name <text>', doc: 'what the job is called' },
  length: { flags: '--length <length>', doc: 'length of the hull, for example "25 ft 4 in"' },
  beam: { flags: '--beam <length>', doc: 'greatest beam' },
  freeboard: { flags: '--freeboard <length>', doc: 'sheer above the water at the stem' },
  kind: {
    flags: '--kind <kind>',
    doc: 'kind of boat; open powerboat when left out',
    fallback: () => 'open powerboat',
  },
  start: { flags: '--start <date>', doc: 'first day of work; today when left out', fallback: today },
  launch: { flags: '--launch <date>', doc: 'the day it should be afloat' },
  shelter: {
    flags: '--shelter <shelter>',
    doc: 'open, cover, open-sided shed, shed or heated shed; cover when left out',
    fallback: () => 'cover',
  },
  timeZone: {
    flags: '--time-zone <name>',
    doc: 'time zone; this computer’s when left out',
    fallback: ownTimeZone,
  },
  latitude: { flags: '--latitude <angle>', doc: 'latitude in degrees, north is plus' },
  longitude: { flags: '--longitude <angle>', doc: 'longitude in degrees, east is plus' },
  paint: {
    flags: '--paint <kind>',
    doc: 'two-part or one-part; two-part when left out',
    fallback: () => 'two-part',
  },
  units: { flags: '--units <system>', doc: 'metric or us; metric when left out', fallback: () => 'metric' },
  weatherFile: { flags: '--weather <file>', doc: 'hourly weather file beside the document' },
} as const satisfies Readonly<Record<string, Question>>

function today(): string {
  return new Date().toISOString().slice(0, 10)
}

function ownTimeZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone
}

const deckFlag: Flag = { flags: '--deck', doc: 'the deck is painted too' }

export const create: Command = {
  name: 'new',
  summary: 'start a job document from a few sizes',
  argument: { name: '<file>', doc: 'where to write it; an existing file is never overwritten' },
  flags: [...Object.values(questions).map(({ flags, doc }): Flag => ({ flags, doc })), deckFlag],
  run: async ({ argument, flags }) => {
    const raw = newJob(answersOf(flags))
    const { problems } = project(raw, { strict: true, catalogueIds: catalogueIds.sheets })
    const errors = problems.filter((problem) => problem.severity === 'error')
    if (errors.length > 0) throw new CliFault(problemLines(argument, errors))
    try {
      await writeFile(argument, writeJson(raw), { flag: 'wx' })
    } catch (error) {
      throw asFault(error, argument)
    }
    return { lines: [plainWords.sentence('cli.created', { file: argument })], json: { file: argument } }
  },
}

/** Asked for in degrees, so that a bare number is one; the document keeps the unit. */
const angles: ReadonlySet<string> = new Set(['latitude', 'longitude'])
const inDegrees = (text: string): string =>
  /^[+-]?\d+([.,]\d+)?$/.test(text.trim()) ? `${text.trim()}°` : text

const needed = ['name', 'length', 'beam', 'freeboard'] as const

function answersOf(flags: Flags): NewJobAnswers {
  const missing = needed.filter((key) => textFlag(flags, key) === undefined)
  if (missing.length > 0) {
    const list = missing.map((key) => questions[key].flags).join(', ')
    throw new CliFault([plainWords.sentence('cli.answersMissing', { flags: list })], 2)
  }
  const given = Object.entries(questions).flatMap(([key, question]: readonly [string, Question]) => {
    const text = textFlag(flags, key === 'weatherFile' ? 'weather' : key) ?? question.fallback?.()
    return text === undefined ? [] : [[key, angles.has(key) ? inDegrees(text) : text]]
  })
  // Whatever was typed is judged by `project`, with the same sentences as a document that was written by hand.
  return { ...(Object.fromEntries(given) as unknown as NewJobAnswers), deck: flags.deck === true }
}
