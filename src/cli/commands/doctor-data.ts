/** The part of `hardstand doctor` that re-reads a data folder: every document, entry and weather file, every job projected. */
import * as Y from 'yjs'
import { catalogueIds } from '#catalogue'
import { readWeatherCsv, seriesHash } from '#intake'
import { project, type RawItems } from '#job'
import { moneyDocument, partOf, versionOf, workDocument } from '#replica'
import { type Examined, examine, type Store } from '#store'
import type { Answer } from '../command.ts'
import { CliFault } from '../fault.ts'
import { problemLines } from '../load-job.ts'
import { plainWords } from '../plain-words.ts'
import { openKeptData } from '../serving/data-folder.ts'

export async function doctorData(folder: string): Promise<Answer> {
  const store = await openKeptData(folder)
  if (!store) throw new CliFault([plainWords.sentence('cli.noData', { folder })])
  try {
    const examined = await examine(store, { document: readDocument, weather: readWeather })
    const jobs = await Promise.all((await jobIds(store)).map((id) => examineJob(store, id)))
    return answer(folder, { examined, jobs })
  } finally {
    await store.close()
  }
}

type JobReport = { readonly id: string; readonly faults: readonly string[] }

type Found = { readonly examined: Examined; readonly jobs: readonly JobReport[] }

function answer(folder: string, { examined, jobs }: Found): Answer {
  const faults = examined.faults.map(({ code, data }) => plainWords.sentence(code, data))
  const { documents, entries, weather } = examined
  const isSound = faults.length === 0 && jobs.every((job) => job.faults.length === 0)
  return {
    lines: [
      plainWords.sentence('cli.dataRead', { folder, documents, entries, series: weather }),
      ...faults.map((line) => `  ${line}`),
      ...jobs.flatMap(({ id, faults: found }) => [
        plainWords.sentence(found.length === 0 ? 'cli.sound' : 'cli.unsound', { file: id }),
        ...found.map((line) => `  ${line}`),
      ]),
    ],
    json: { ok: isSound, folder, documents, entries, weather, faults: examined.faults, jobs },
    exitCode: isSound ? 0 : 1,
  }
}

function readDocument(_name: string, updates: readonly Uint8Array[]): Y.Doc {
  const doc = new Y.Doc()
  for (const update of updates) Y.applyUpdate(doc, update)
  return doc
}

function readWeather(hash: string, bytes: Uint8Array): void {
  const read = readWeatherCsv(bytes)
  if (!read.ok) throw new Error(plainWords.sentence(read.problems[0]!.code, read.problems[0]!.data))
  const found = seriesHash(read.series)
  if (found !== hash) throw new Error(`hash: differs, got ${found}, expected ${hash}`)
}

const jobIds = async (store: Store): Promise<readonly string[]> =>
  (await store.documentNames()).filter((name) => name.startsWith('work:')).map((name) => name.slice(5))

/** A document that cannot be read is told already: its job is left out. */
async function examineJob(store: Store, id: string): Promise<JobReport> {
  try {
    const work = readDocument(id, (await store.document(workDocument(id))).updates)
    const money = readDocument(id, (await store.document(moneyDocument(id))).updates)
    const prices = partOf(money)
    const raw = {
      hardstand: versionOf(work),
      work: partOf(work),
      ...(Object.keys(prices).length > 0 ? { money: prices } : {}),
      log: await logOf(store, id),
    }
    const { problems } = project(raw, {
      strict: false,
      catalogueIds: catalogueIds.sheets,
      consumableIds: catalogueIds.priced,
    })
    return {
      id,
      faults: problemLines(
        id,
        problems.filter(({ severity }) => severity === 'error'),
      ),
    }
  } catch {
    return { id, faults: [] }
  }
}

async function logOf(store: Store, job: string): Promise<RawItems> {
  const entries = await store.entriesAfter(job, { after: 0, most: Number.MAX_SAFE_INTEGER })
  return Object.fromEntries(entries.map(({ id, cells }) => [id, cells]))
}
