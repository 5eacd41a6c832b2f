import { describe, expect, it } from 'vitest'
import { sampleBytes } from '../../test/job-documents.ts'
import { type Projected, parseJob, project, type RawDocument, sampleNames } from './index.ts'

const raw = parseJob(sampleBytes('open-powerboat')).document!
const first = project(raw, { strict: true })
const again = (document: RawDocument, previous: Projected = first): Projected =>
  project(document, { strict: true, previous })

const withCell = (part: 'work' | 'money', section: string, id: string, cells: object): RawDocument => {
  const old = raw[part]?.[section] ?? {}
  return {
    ...raw,
    [part]: { ...raw[part], [section]: { ...old, [id]: { ...(old[id] as object), ...cells } } },
  }
}

/** Names of the sections of `work` that are not the same object as before. */
const changed = (now: Projected): readonly string[] =>
  Object.keys(first.work).filter(
    (name) => now.work[name as keyof typeof now.work] !== first.work[name as keyof typeof first.work],
  )

describe('a document that did not change', () => {
  it('gives the very same projection', () => {
    const now = again(raw)
    expect(now.work).toBe(first.work)
    expect(now.money).toBe(first.money)
    expect(now.log).toBe(first.log)
  })

  it('gives the very same projection when every map in it is a new one', () => {
    const now = again(JSON.parse(JSON.stringify(raw)) as RawDocument)
    expect(now.work).toBe(first.work)
    expect(now.money).toBe(first.money)
    expect(now.log).toBe(first.log)
  })

  it('reads no cell again when the maps are new ones', () => {
    const now = again(JSON.parse(JSON.stringify(raw)) as RawDocument)
    const readOf = ({ memory }: Projected) => memory.work.many.get('zones')?.read.get('foredeck')
    expect(readOf(now)).toBe(readOf(first))
  })

  it('gives the very same projection when its maps are in another order', () => {
    const turned = (map: object): object =>
      Object.fromEntries(
        Object.entries(map)
          .reverse()
          .map(([key, value]) => [key, typeof value === 'object' ? turned(value as object) : value]),
      )
    expect(again(turned(raw) as RawDocument).work).toBe(first.work)
  })
})

describe('one edit', () => {
  it('of a zone changes that zone and its list, and nothing else', () => {
    const now = again(withCell('work', 'zones', 'foredeck', { area: '3.5 m²' }))
    expect(changed(now)).toEqual(['zones'])
    expect(now.work.zones.filter((zone) => !first.work.zones.includes(zone)).map(({ id }) => id)).toEqual([
      'foredeck',
    ])
    expect(now.money).toBe(first.money)
  })

  it('that means the same changes the text alone', () => {
    const now = again(withCell('work', 'zones', 'foredeck', { name: 'Foredeck' }))
    expect(now.work).toBe(first.work)
  })

  it('of a price leaves the work as it was', () => {
    const now = again(withCell('money', 'prices', 'stripe-1', { price: 'EUR 21' }))
    expect(now.work).toBe(first.work)
    expect(now.money?.rates).toBe(first.money?.rates)
    expect(now.money?.prices).not.toBe(first.money?.prices)
  })

  it('of the currency reads the prices again', () => {
    const terms = { ...raw.money?.terms, currency: 'SEK' }
    const now = again({ ...raw, money: { ...raw.money, terms } } as RawDocument)
    expect(now.problems.filter(({ code }) => code === 'job.currency').length).toBeGreaterThan(20)
    expect(now.work).toBe(first.work)
  })

  it('that removes a zone takes what needs it, and putting it back brings everything back', () => {
    const without = again(withCell('work', 'zones', 'foredeck', { gone: 'true' }))
    expect(without.work.findings.map(({ zone }) => zone)).not.toContain('foredeck')
    expect(without.work.layers.flatMap(({ zones }) => zones)).not.toContain('foredeck')
    expect(without.problems.length).toBeGreaterThan(0)
    const back = again(raw, without)
    expect(back.work).toEqual(first.work)
    expect(back.problems).toEqual([])
    expect(back.work.people).toBe(first.work.people)
  })

  it('keeps the problems of the cells that were not read again', () => {
    const bad = withCell('work', 'zones', 'foredeck', { area: 'large' })
    const then = again(bad)
    const now = again({ ...bad, work: { ...bad.work, people: { ...bad.work.people } } }, then)
    expect(now.problems).toEqual(then.problems)
    expect(now.problems.map(({ pointer }) => pointer)).toEqual(['/work/zones/foredeck/area'])
  })
})

it('the same reading comes out with and without a previous one, whatever that was', () => {
  const documents = sampleNames.map((name) => parseJob(sampleBytes(name)).document!)
  let previous: Projected | undefined
  for (const document of [
    ...documents,
    ...documents.toReversed(),
    { hardstand: '1', work: {} },
    documents[0]!,
  ]) {
    const now: Projected = project(document, { strict: true, ...(previous ? { previous } : {}) })
    const { memory: _, ...fresh } = project(document, { strict: true })
    expect(now).toMatchObject(fresh)
    expect(Object.keys(now).sort()).toEqual([...Object.keys(fresh), 'memory'].sort())
    previous = now
  }
})

it('other ids of the catalogue are looked at again', () => {
  const known = project(raw, { strict: true, catalogueIds: ['two-part-finish'], previous: first })
  expect(known.problems.map(({ code }) => code)).toContain('job.ref')
})

it('an edit reads the cells of the edited item and no others', () => {
  let looks: string[] = []
  const watched = (id: string, cells: object): object =>
    new Proxy(cells, {
      get: (target, key) => {
        looks.push(id)
        return Reflect.get(target, key)
      },
    })
  const zones = Object.fromEntries(
    Object.entries(raw.work.zones ?? {}).map(([id, cells]) => [id, watched(id, cells as object)]),
  )
  const document = { ...raw, work: { ...raw.work, zones } } as unknown as RawDocument
  const before = project(document, { strict: true })
  expect(new Set(looks)).toEqual(new Set(Object.keys(zones)))
  looks = []
  const transom = watched('transom', { ...(raw.work.zones?.transom as object), name: 'Stern' })
  const edited = {
    ...document,
    work: { ...document.work, zones: { ...zones, transom } },
  } as unknown as RawDocument
  const after = project(edited, { strict: true, previous: before })
  expect(new Set(looks)).toEqual(new Set(['transom']))
  expect(after.work.zones.find(({ id }) => id === 'transom')?.name).toBe('Stern')
})
