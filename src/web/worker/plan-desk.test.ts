import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { catalogue, catalogueIds } from '#catalogue'
import { readWeather, readWeatherCsv, seriesHash, writeWeatherCsv } from '#intake'
import { parseJob, project } from '#job'
import { type MadeHour, plan, type Solid, type Suggestions, type WeatherAtHand } from '#plan'
import { fillPart, setCell } from '#replica'
import { sampleBytes } from '../../../test/job-documents.ts'
import { madeEpw } from '../../../test/support/made-epw.mjs'
import type { Candidate, Effect, PlannedMessage, ShownPlan } from './messages.ts'
import { patched } from './patch.ts'
import { createPlanDesk } from './plan-desk.ts'

const raw = parseJob(sampleBytes('open-powerboat')).document!
const csv = new Uint8Array(
  readFileSync(new URL('../../../samples/open-powerboat.weather.csv', import.meta.url)),
)
const weather = readWeatherCsv(csv)
if (!weather.ok) throw new Error('the sample weather does not read')
const hash = seriesHash(weather.series)
const readYear = readWeather(new TextEncoder().encode(madeEpw()))
if (!readYear.ok) throw new Error('the made year does not read')
const typicalCsv = writeWeatherCsv(readYear.series)
const typicalHash = seriesHash(readYear.series)
const nowMs = Date.parse('2027-04-10T08:00:00Z')

const sample = () => {
  const docs = { work: new Y.Doc(), money: new Y.Doc() }
  fillPart(docs.work, raw.work, '1')
  setCell(docs.work, { section: 'weather', key: 'hash' }, hash)
  fillPart(docs.money, raw.money!)
  const desk = createPlanDesk({ app: 'test', seed: 1, clockMs: () => 0 })
  for (const part of ['work', 'money'] as const) {
    desk.update(part, Y.encodeStateAsUpdate(docs[part]))
    docs[part].on('update', (update: Uint8Array) => desk.update(part, update))
  }
  desk.setEntries(raw.log ?? {})
  desk.setWeather(hash, csv)
  let turn = 0
  let page: ShownPlan | undefined
  const next = (): PlannedMessage => {
    const message = structuredClone(desk.plan({ turn: ++turn, nowMs }))
    page = patched(page, message.patch) as ShownPlan
    return message
  }
  return { docs, desk, next, page: () => page! }
}

/** Stages that a message says anything of. */
const stagesOf = ({ patch }: PlannedMessage): string[] =>
  Object.keys('put' in patch ? (patch.put as ShownPlan) : 'keys' in patch ? patch.keys : {})

/** The plan made from the documents at once, as the page shows it. */
const atOnce = (docs: { readonly work: Y.Doc; readonly money: Y.Doc }) => {
  const document = { ...raw, work: partJson(docs.work), money: partJson(docs.money) }
  const projected = project(document as never, {
    strict: false,
    catalogueIds: catalogueIds.sheets,
    consumableIds: catalogueIds.priced,
  })
  const { conditions, ...rest } = plan({
    work: projected.work,
    money: projected.money!,
    log: projected.log,
    weather: weather.series,
    catalogue,
    nowMs,
    seed: 1,
    app: 'test',
  })
  return {
    ...rest,
    conditions: { ...conditions, zones: conditions.zones.map(({ failing: _, ...hours }) => hours) },
  }
}

const partJson = (doc: Y.Doc): unknown =>
  Object.fromEntries(
    [...doc.share.keys()]
      .filter((name) => name !== 'hardstand')
      .map((name) => [name, doc.getMap(name).toJSON()]),
  )

describe('the desk', () => {
  it('gives the page, message by message, the plan that is made at once', () => {
    const { docs, next, page } = sample()
    next()
    setCell(docs.work, { section: 'boat', key: 'beam' }, '2.6 m')
    next()
    setCell(docs.money, { section: 'terms', key: 'margin' }, '31 %')
    next()
    expect(page()).toEqual(structuredClone(atOnce(docs)))
  })

  it('sends again only the stages that an edit reached', () => {
    const { docs, next } = sample()
    const first = next()
    expect(stagesOf(first)).toContain('conditions')
    setCell(docs.money, { section: 'terms', key: 'margin' }, '31 %')
    expect(stagesOf(next()).sort()).toEqual(['money', 'stamp'])
    expect(stagesOf(next())).toEqual(['stamp'])
  })

  it('says what is wrong where, and plans the rest', () => {
    const { docs, next } = sample()
    next()
    setCell(docs.work, { section: 'zones', item: 'foredeck', key: 'area' }, 'wide')
    const { problems, complete } = next()
    expect(problems.map(({ pointer }) => pointer)).toContain('/work/zones/foredeck/area')
    expect(complete).toBe(true)
  })

  it('asks for the weather the job names, and plans without another one', () => {
    const { docs, desk, next, page } = sample()
    setCell(docs.work, { section: 'weather', key: 'hash' }, 'f'.repeat(64))
    expect(next().wantsWeather).toBe('f'.repeat(64))
    expect(page().conditions.zones).toEqual([])
    desk.setWeather('f'.repeat(64), csv)
    expect(next().weatherFault?.code).toBe('web.weatherOther')
    expect(page().conditions.zones).toEqual([])
  })

  it('goes on behind the weather with the typical year the job names, and asks for that too', () => {
    const { docs, desk, next, page } = sample()
    setCell(docs.work, { section: 'weather', key: 'typicalHash' }, typicalHash)
    expect(next().wantsWeather).toBe(typicalHash)
    expect(page().conditions.horizon).toBeUndefined()
    desk.setWeather(typicalHash, new TextEncoder().encode(typicalCsv))
    expect(next().wantsWeather).toBeUndefined()
    const { horizon, zones } = page().conditions
    expect(horizon!.forecastUntilMinute).toBeGreaterThan(nowMs / 60_000)
    expect(zones[0]!.goOnDays).toHaveLength(zones[0]!.verdicts.length)
    const { behind } = desk.answer({ kind: 'weather' }) as WeatherAtHand
    expect(behind!.firstMinute).toBe(horizon!.forecastUntilMinute)
  })

  it('fits the shelter to the readings of a logger that the job names, and asks for them too', () => {
    const { docs, desk, next, page } = sample()
    next()
    const { series } = weather
    const cut = (column: ArrayLike<number>) => Array.from(column).slice(240, 336)
    const logger = {
      kind: 'hourlySeries',
      startMs: series.startMs + 240 * 3_600_000,
      hours: 96,
      airC: cut(series.airC),
      humidityShare: cut(series.humidityShare),
      gaps: [],
      source: 'a logger',
      licence: '',
    } as const
    const mark = seriesHash(logger)
    setCell(docs.work, { section: 'weather', key: 'loggerHash' }, mark)
    expect(next().wantsWeather).toBe(mark)
    expect(page().conditions.zones.length).toBeGreaterThan(0)
    desk.setWeather(mark, new TextEncoder().encode(writeWeatherCsv(logger)))
    expect(next().wantsWeather).toBeUndefined()
    const noted = page().conditions.notes.find(({ code }) => code === 'climate.shelterFitted')
    expect(noted?.data.fittedHours).toBe(96)
    expect(noted?.data.airLagHours).toBeLessThan(0.1)
  })

  it('holds the newest weathers only', () => {
    const { docs, desk, next } = sample()
    for (const letter of 'abcd') desk.setWeather(letter.repeat(64), csv)
    expect(next().wantsWeather).toBe(hash)
    setCell(docs.work, { section: 'weather', key: 'hash' }, 'a'.repeat(64))
    expect(next().weatherFault?.code).toBe('web.weatherOther')
  })

  it('finds build-ups that can be sent to the page', () => {
    const { desk, next } = sample()
    next()
    const found = desk.answer({ kind: 'suggest' }) as Suggestions
    expect(found.groups.length).toBeGreaterThan(0)
    expect(structuredClone(found)).toEqual(found)
  })

  it('tells why an hour is shut, and how the plan would move, without moving it', () => {
    const { desk, next, page } = sample()
    next()
    const hours = page().conditions.zones[0]!
    const shut = hours.verdicts.indexOf('no')
    const why = desk.answer({ kind: 'why', key: hours.key, minute: hours.firstMinute + shut * 60 })
    expect(why).not.toEqual([])
    const first = page().days.placed[0]!
    const entry = { at: '2027-04-10T09:00+02:00', kind: 'done', step: first.step }
    const moved = desk.answer({ kind: 'what if', entries: { x: entry }, nowMs }) as ShownPlan
    const endOf = ({ days }: Pick<ShownPlan, 'days'>) =>
      days.placed.find(({ step }) => step === first.step)?.endMinute
    expect(endOf(moved)).toBe(Date.parse(entry.at) / 60_000)
    expect(endOf(page())).not.toBe(endOf(moved))
    expect(stagesOf(next())).toEqual(['stamp'])
  })

  it('tells what would make an hour in days that have none, by the plan as it stands', () => {
    const { desk, next, page } = sample()
    next()
    const hours = page().conditions.zones.find(({ place }) => place !== 'indoors')!
    const { firstMinute } = page().conditions
    const within = { fromMinute: firstMinute, toMinute: firstMinute + 3 * 1440 }
    const made = desk.answer({ kind: 'make an hour', key: hours.key, ...within }) as MadeHour
    expect(structuredClone(made)).toEqual(made)
    expect(made.under).toBeDefined()
    expect(desk.answer({ kind: 'make an hour', key: 'nowhere|none', ...within })).toBeUndefined()
  })

  it('gives the boat as triangles only when somebody looks, each face with its zone', () => {
    const { desk, next, page } = sample()
    expect(JSON.stringify(next().patch)).not.toContain('triangles')
    const solid = desk.answer({ kind: 'solid' }) as Solid
    const zoneOf = (id: string) => solid.faces.find((face) => face.id === id)?.zone
    expect(zoneOf('topsides-port')).toBe('topsides-port')
    expect(zoneOf('foredeck')).toBe('foredeck')
    expect(zoneOf('bottom')).toBeUndefined()
    const areaOf = (zone: string) =>
      solid.faces.filter((face) => face.zone === zone).reduce((sum, { areaM2 }) => sum + areaM2, 0)
    const { table } = page().marks.stripes[0]!
    expect(areaOf('boot-stripe') / table.areaM2).toBeCloseTo(1, 2)
    const side = page().surfaces.zones.find(({ id }) => id === 'topsides-port')!
    const under = table.areaPerSideM2
    expect(areaOf('topsides-port')).toBeGreaterThan(side.areaM2 * 0.999 - under)
    expect(areaOf('topsides-port')).toBeLessThan(side.areaM2)
    expect(solid.points).toHaveLength(0)
    expect(stagesOf(next())).toEqual(['stamp'])
  })

  it('finds the guesses the plan rests on, and how far each moves it', () => {
    const { docs, desk, next } = sample()
    setCell(docs.work, { section: 'boat', key: 'freeboardMid' }, undefined)
    setCell(docs.work, { section: 'findings', item: 'soft-core', key: 'hours' }, 'about 16 h')
    next()
    const found = desk.answer({ kind: 'candidates' }) as readonly Candidate[]
    const freeboard = found.find(({ place }) => place.key === 'freeboardMid')!
    const effect = desk.answer({ kind: 'weigh', candidate: freeboard, nowMs }) as Effect
    expect(effect.litres).toBeGreaterThan(0.5)
    expect(effect.coins).toBeGreaterThan(0)
    expect(stagesOf(next())).toEqual(['stamp'])
    setCell(docs.work, { section: 'boat', key: 'freeboardMid' }, '0.95 m')
    next()
    const left = desk.answer({ kind: 'candidates' }) as readonly Candidate[]
    expect(left.map(({ place }) => place.key)).not.toContain('freeboardMid')
  })

  it('plans without money when it has none', () => {
    const desk = createPlanDesk({ app: 'test', seed: 1, clockMs: () => 0 })
    const work = new Y.Doc()
    fillPart(work, raw.work, '1')
    desk.update('work', Y.encodeStateAsUpdate(work))
    expect(stagesOf(desk.plan({ turn: 1, nowMs }))).not.toContain('money')
  })

  it('plans whatever is in a damaged document, and an empty one', () => {
    const desk = createPlanDesk({ app: 'test', seed: 1, clockMs: () => 0 })
    const empty = desk.plan({ turn: 1, nowMs })
    expect(empty.complete).toBe(false)
    const doc = new Y.Doc()
    doc.getMap('zones').set('a', 7)
    doc.getMap('boat').set('beam', new Y.Array())
    doc.getMap('nonsense').set('x', 'y')
    doc.getMap('hardstand').set('version', '99')
    desk.update('work', Y.encodeStateAsUpdate(doc))
    const damaged = desk.plan({ turn: 2, nowMs })
    expect(damaged.readOnly).toBe(true)
    expect(damaged.problems.map(({ pointer }) => pointer)).toEqual(
      expect.arrayContaining(['/work/zones/a', '/work/boat/beam', '/work/nonsense']),
    )
  })
})
