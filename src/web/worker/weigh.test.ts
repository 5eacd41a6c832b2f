import { describe, expect, it } from 'vitest'
import { parseJob, project } from '#job'
import type { Plan } from '#plan'
import { sampleBytes } from '../../../test/job-documents.ts'
import { candidatesOf, effectOf, withCell } from './weigh.ts'

const raw = parseJob(sampleBytes('open-powerboat')).document!

const planWith = (endMinute: number, mixedM3: number, totalCoins?: number): Plan =>
  ({
    surfaces: {
      zones: [
        { id: 'foredeck', how: 'share', areaM2: 4 },
        { id: 'cockpit', how: 'given', areaM2: 3 },
      ],
      hull: {
        particulars: {
          freeboardMid: 1,
          freeboardStern: 0.8,
          draft: 0,
          lengthWaterline: 6,
          lengthOverall: 6.5,
        },
      },
    },
    buildUps: {
      layers: [
        { layer: 'gloss', dryFilmM: { value: 40e-6, certainty: 'typical' } },
        { layer: 'gloss', dryFilmM: { value: 40e-6, certainty: 'typical' } },
        { layer: 'primer', dryFilmM: { value: 100e-6, certainty: 'sheet' } },
      ],
    },
    days: { workEndMinute: endMinute },
    quantities: { sheets: [{ mixedM3 }] },
    ...(totalCoins === undefined ? {} : { money: { totalCoins } }),
  }) as unknown as Plan

describe('the guesses', () => {
  it('are tried 15 % below and above a size that was taken, and 25 % a film of a generic sheet', () => {
    const document = withCell(raw, { part: 'work', section: 'boat', key: 'freeboardMid' }, 'about 1 m')
    const found = candidatesOf(project(document, { strict: false }), planWith(0, 0))
    const of = (key: string) => found.find(({ place }) => place.key === key)
    expect(of('freeboardMid')).toMatchObject({ low: 'about 0.850 m', high: 'about 1.150 m' })
    expect(found.filter(({ place }) => place.key === 'dryFilm')).toEqual([
      {
        place: { part: 'work', section: 'layers', item: 'gloss', key: 'dryFilm' },
        low: 'about 30 µm',
        high: 'about 50 µm',
      },
    ])
  })

  it('make no waterline longer than the hull', () => {
    const document = withCell(raw, { part: 'work', section: 'boat', key: 'lengthWaterline' }, 'about 6 m')
    const found = candidatesOf(project(document, { strict: false }), planWith(0, 0))
    expect(found.find(({ place }) => place.key === 'lengthWaterline')).toMatchObject({
      low: 'about 5.100 m',
      high: 'about 6.500 m',
    })
  })

  it('are tried 35 % below and above the share of the deck that stands for a zone', () => {
    const found = candidatesOf(project(raw, { strict: false }), planWith(0, 0))
    expect(found.filter(({ place }) => place.section === 'zones' && place.key === 'area')).toEqual([
      {
        place: { part: 'work', section: 'zones', item: 'foredeck', key: 'area' },
        low: 'about 2.600 m²',
        high: 'about 5.400 m²',
      },
    ])
  })

  it('are not tried where somebody has measured, or where there is nothing', () => {
    const found = candidatesOf(project(raw, { strict: false }), planWith(0, 0))
    expect(found.map(({ place }) => place.key)).not.toContain('freeboardStern')
    expect(found.map(({ place }) => place.key)).not.toContain('draft')
  })
})

it('the effect is how far two plans lie apart: days of 1440 minutes, litres, coins', () => {
  expect(effectOf(planWith(1000, 0.01, 500), planWith(3880, 0.0125, 200))).toEqual({
    days: 2,
    litres: 2.5,
    coins: 300,
  })
  expect(effectOf(planWith(0, 0.01), planWith(0, 0.01, 200))).toEqual({ days: 0, litres: 0 })
})

it('another text in one cell leaves the document as it was', () => {
  const before = JSON.stringify(raw)
  const place = { part: 'work', section: 'zones', item: 'foredeck', key: 'area' } as const
  expect(withCell(raw, place, '9 m²').work.zones?.foredeck).toMatchObject({ area: '9 m²', name: 'Foredeck' })
  expect(JSON.stringify(raw)).toBe(before)
})
