/** A job document from a file: read, projected, and refused with every problem in it when it has any. */
import { catalogueIds } from '#catalogue'
import { byPlace, type Problem, type Projected, parseJob, project, type RawDocument } from '#job'
import { createWords, problemLine, type Words } from '#words'
import { CliFault } from './fault.ts'
import { plainWords } from './plain-words.ts'
import { readBytes } from './read-bytes.ts'

export type LoadedJob = {
  readonly path: string
  readonly raw: RawDocument
  readonly projected: Projected
  readonly problems: readonly Problem[]
  readonly words: Words
}

/** Reads whatever can be read; the problems go with it. */
export async function readJob(
  path: string,
): Promise<Omit<LoadedJob, 'raw' | 'projected' | 'words'> & Partial<LoadedJob>> {
  const bytes = await readBytes(path)
  const parsed = parseJob(bytes, path === '-' ? {} : { name: path })
  if (!parsed.document) return { path, problems: parsed.problems }
  const projected = project(parsed.document, {
    strict: true,
    locate: parsed.locate,
    catalogueIds: catalogueIds.sheets,
    consumableIds: catalogueIds.priced,
  })
  return {
    path,
    raw: parsed.document,
    projected,
    problems: [...parsed.problems, ...projected.problems].sort(byPlace),
    words: wordsFor(projected),
  }
}

const wordsFor = ({ work, money }: Projected): Words =>
  createWords({
    locale: work.job.locale ?? 'en-GB',
    system: work.job.units ?? 'metric',
    timeZone: work.place.timeZone,
    ...(money ? { currency: money.terms.currency } : {}),
  })

/** A job to plan with: without a single error. */
export async function loadJob(path: string): Promise<LoadedJob> {
  const job = await readJob(path)
  const errors = job.problems.filter((problem) => problem.severity === 'error')
  const newer = job.projected?.readOnly === true
  if (errors.length > 0 || newer || !job.raw || !job.projected || !job.words) {
    throw new CliFault(problemLines(path, newer && errors.length === 0 ? job.problems : errors))
  }
  return { ...job, raw: job.raw, projected: job.projected, words: job.words }
}

/** One line a problem: file, line, column, sentence, and the pointer. */
export function problemLines(path: string, problems: readonly Problem[]): readonly string[] {
  return problems.map((problem) => problemLine(plainWords, path, problem))
}
