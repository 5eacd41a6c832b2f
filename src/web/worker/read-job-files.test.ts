import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { type RawDocument, writeJson } from '#job'
import { fillPart, partOf, versionOf } from '#replica'
import { createWords, problemLine } from '#words'
import { madeEpw } from '../../../test/support/made-epw.mjs'
import { patched } from './patch.ts'
import { createPlanDesk } from './plan-desk.ts'
import { type GivenFile, type JobRead, readJobFiles } from './read-job-files.ts'

const words = createWords({ locale: 'en-GB', system: 'metric' })
const nowMs = Date.parse('2027-04-10T08:00:00Z')

const given = (name: string, content: string | Uint8Array): GivenFile => new File([content as BlobPart], name)

const sample = (name: string): GivenFile =>
  given(name, readFileSync(new URL(`../../../samples/${name}`, import.meta.url)))

async function taken(files: readonly GivenFile[]): Promise<Extract<JobRead, { readonly ok: true }>> {
  const read = await readJobFiles(files)
  if (!read.ok) throw new Error(lines(read).join())
  return read
}

const lines = (read: JobRead): readonly string[] =>
  read.ok ? [] : read.problems.map((problem) => problemLine(words, problem.file, problem))

/** A job as a page keeps it: two documents, the log, and the weather. */
function kept({ raw, weathers }: Extract<JobRead, { readonly ok: true }>) {
  const docs = { work: new Y.Doc(), money: new Y.Doc() }
  fillPart(docs.work, raw.work, raw.hardstand)
  fillPart(docs.money, raw.money ?? {})
  return { docs, log: raw.log ?? {}, weathers }
}

function planOf({ docs, log, weathers }: ReturnType<typeof kept>): unknown {
  const desk = createPlanDesk({ app: 'test', seed: 1, clockMs: () => 0 })
  for (const part of ['work', 'money'] as const) desk.update(part, Y.encodeStateAsUpdate(docs[part]))
  desk.setEntries(log)
  for (const { hash, bytes } of weathers) desk.setWeather(hash, bytes)
  return patched(undefined, desk.plan({ turn: 1, nowMs }).patch)
}

describe('job files', () => {
  it('that were exported plan, when they are brought back, as they did', async () => {
    const first = kept(await taken([sample('open-powerboat.yaml'), sample('open-powerboat.weather.csv')]))
    const raw: RawDocument = {
      hardstand: versionOf(first.docs.work),
      work: partOf(first.docs.work),
      money: partOf(first.docs.money),
      log: first.log,
    }
    const again = await taken([
      given('job.json', writeJson(raw)),
      given('job.weather.csv', first.weathers[0]!.bytes),
    ])
    expect(again.weathers[0]!.hash).toBe(first.weathers[0]!.hash)
    expect(Object.keys(first.log).length).toBeGreaterThan(0)
    const [plan, replan] = [planOf(first), planOf(kept(again))]
    expect(plan).toMatchObject({ money: expect.anything(), days: expect.anything() })
    expect(replan).toEqual(plan)
  })

  it('come with what a logger read, told from the weather by its name or its mark', async () => {
    const job = readFileSync(new URL('../../../samples/open-powerboat.yaml', import.meta.url), 'utf8')
    const named = job.replace(/^( *)file: open-powerboat.weather.csv$/m, '$&\n$1logger: shed.csv')
    expect(named).not.toBe(job)
    const weather = await sample('open-powerboat.weather.csv').arrayBuffer()
    const table = 'Time,Temperature (°C),Humidity (%)\n2027-04-11 08:00,9.5,71\n2027-04-11 09:00,9.9,70\n'
    const first = await taken([
      given('job.yaml', named),
      given('shed.csv', table),
      given('open-powerboat.weather.csv', new Uint8Array(weather)),
    ])
    const marks = ({ raw }: typeof first) => [raw.work.weather?.hash, raw.work.weather?.loggerHash]
    const [shed, outside] = first.weathers
    expect(marks(first)).toEqual([outside!.hash, shed!.hash])
    const again = await taken([
      given('job.json', writeJson(first.raw)),
      given('job.logger.csv', shed!.bytes),
      given('job.weather.csv', outside!.bytes),
    ])
    expect(marks(again)).toEqual(marks(first))
    expect(again.weathers).toEqual(first.weathers)
  })

  it('that are bad are refused with the lines of every error', async () => {
    const bad =
      'hardstand: 1\nwork:\n  job:\n    name: Teal\n    laucnh: 2027-05-01\n  boat:\n    beam: wide\n'
    const read = await readJobFiles([given('bad.yaml', bad)])
    expect(read.ok).toBe(false)
    expect(lines(read)).toContainEqual(
      expect.stringMatching(/^bad\.yaml:5:5: .*launch.* \(\/work\/job\/laucnh\)$/),
    )
    expect(lines(read)).toContainEqual(expect.stringMatching(/^bad\.yaml:7:11: .* \(\/work\/boat\/beam\)$/))
    expect(lines(await readJobFiles([sample('open-powerboat.yaml'), given('w.csv', 'time,airC\n')]))).toEqual(
      [expect.stringMatching(/^w\.csv:1: /)],
    )
  })

  it('that are too large are not read at all', async () => {
    const unread = { arrayBuffer: () => Promise.reject(new Error('read')) }
    const read = await readJobFiles([
      { name: 'big.yaml', size: 10 ** 9, ...unread },
      { name: 'big.csv', size: 10 ** 9, ...unread },
    ])
    expect(read).toMatchObject({
      ok: false,
      problems: [{ code: 'job.tooLarge' }, { code: 'intake.fileTooLarge' }],
    })
  })

  it('may be a job, its forecast and its typical year, in any order; two forecasts are one too many', async () => {
    const [job, csv] = [sample('open-powerboat.yaml'), sample('open-powerboat.weather.csv')]
    const year = given('year.epw', madeEpw())
    const { raw, weathers } = await taken([year, job, csv])
    const [typical, forecast] = weathers
    expect([typical?.typicalYear, forecast?.typicalYear]).toEqual([true, false])
    expect(raw.work.weather).toMatchObject({ hash: forecast!.hash, typicalHash: typical!.hash })
    const twice = await readJobFiles([job, csv, given('other.csv', new Uint8Array(await csv.arrayBuffer()))])
    expect(twice.ok ? [] : twice.problems.map(({ code, file }) => [code, file])).toEqual([
      ['import.oneAtATime', 'other.csv'],
    ])
    // By itself it is the weather, as long as the job names no place for it.
    const alone = await taken([job, year])
    expect(alone.raw.work.weather?.hash).toBe(typical!.hash)
  })

  it('are one job and one weather; without the weather that it names, the job says which', async () => {
    const codes = (read: JobRead) => (read.ok ? [] : read.problems.map(({ code }) => code))
    const job = sample('open-powerboat.yaml')
    expect(codes(await readJobFiles([sample('open-powerboat.weather.csv')]))).toEqual(['import.noJob'])
    expect(codes(await readJobFiles([job, sample('deck-only.yaml')]))).toEqual(['import.oneAtATime'])
    expect((await taken([job])).wantsWeather).toBe('open-powerboat.weather.csv')
  })
})
