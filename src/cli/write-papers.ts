/** Writes the papers of a plan into a folder, each whole or not at all. */
import { mkdir, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { type PaperInput, paperJob } from '#papers'
import { judgedFromM } from '#plan'
import type { MadePlan } from './make-plan.ts'
import { asFault } from './read-bytes.ts'

export type PaperOptions = {
  readonly folder: string
  readonly page: 'A4' | 'Letter'
  readonly date: string | undefined
}

/** @returns the paths written, in order. */
export async function writePapers(made: MadePlan, options: PaperOptions): Promise<readonly string[]> {
  // The press and its typefaces are only loaded when something is printed.
  const { papersFor } = await import('#papers')
  const papers = await papersFor(paperInput(made, options))
  try {
    await mkdir(options.folder, { recursive: true })
    const paths: string[] = []
    for (const paper of papers) {
      const path = join(options.folder, paper.name)
      await writeWhole(path, paper.bytes)
      paths.push(path)
    }
    return paths
  } catch (error) {
    throw asFault(error, options.folder)
  }
}

/** Under another name first: a paper that is half written never stands where a whole one is looked for. */
async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const partial = `${path}.${process.pid}.part`
  try {
    await writeFile(partial, bytes)
    await rename(partial, path)
  } catch (error) {
    await rm(partial, { force: true })
    throw error
  }
}

function paperInput({ plan, job }: MadePlan, { page, date }: PaperOptions): PaperInput {
  const { work } = job.projected
  return {
    plan,
    job: paperJob(work, { judgedFromM: judgedFromM(work.job.finish) }),
    page,
    ...(date === undefined ? {} : { date }),
  }
}
