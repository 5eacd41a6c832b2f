/** Puts the sample jobs into a store that holds no job yet. */
import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import * as Y from 'yjs'
import { readWeatherCsv, seriesHash, writeWeatherCsv } from '#intake'
import { documentVersion, parseJob, type RawDocument, type RawPart, sampleNames } from '#job'
import { fillPart, moneyDocument, putShopJob, shopDocument, workDocument } from '#replica'
import type { Store } from '#store'

const folder = fileURLToPath(new URL('../../../samples/', import.meta.url))

/**
 * The list of jobs is written last: whatever ends this in the middle, it is begun anew. The same cells a second time
 * change nothing.
 */
export async function seedSamples(store: Store, nowMs: number): Promise<void> {
  const { updates } = await store.document(shopDocument)
  if (updates.length > 0) return
  const shop = new Y.Doc()
  for (const [at, id] of sampleNames.entries()) {
    const raw = await readSample(id)
    await putSample(store, id, raw)
    // The list has the newest first; the samples keep their order.
    putShopJob(shop, id, { name: cell(raw, 'name'), boatName: cell(raw, 'boatName'), madeMs: nowMs - at })
  }
  await store.append(shopDocument, Y.encodeStateAsUpdate(shop))
}

async function putSample(store: Store, id: string, raw: RawDocument): Promise<void> {
  const weather = readWeatherCsv(await readFile(`${folder}${id}.weather.csv`))
  if (!weather.ok) throw new Error(`sample: weather not read, got ${id}, expected no errors`)
  const hash = seriesHash(weather.series)
  await store.putWeather(hash, Buffer.from(writeWeatherCsv(weather.series)))
  const work: RawPart = { ...raw.work, weather: { ...raw.work.weather, hash } }
  await store.append(workDocument(id), documentOf(work))
  if (raw.money) await store.append(moneyDocument(id), documentOf(raw.money))
  const entries = Object.entries(raw.log ?? {}).map(([entry, cells]) => ({ id: entry, cells }))
  if (entries.length > 0) await store.addEntries(id, entries)
}

async function readSample(id: string): Promise<RawDocument> {
  const { document } = parseJob(await readFile(`${folder}${id}.yaml`), { name: `${id}.yaml` })
  if (!document) throw new Error(`sample: not read, got ${id}, expected a job document`)
  return document
}

function documentOf(part: RawPart): Uint8Array {
  const doc = new Y.Doc()
  fillPart(doc, part, String(documentVersion))
  return Y.encodeStateAsUpdate(doc)
}

function cell(raw: RawDocument, key: string): string {
  const text = raw.work.job?.[key]
  return typeof text === 'string' ? text : ''
}
