import { expect, it } from 'vitest'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw } from '../../../test/support/samples.ts'
import { sandingRows } from './sanding-rows.ts'

const made = plan(planInput(projectRaw(sampleRaw('open-powerboat')), undefined))

it('adds up the zones, layer by layer outward and coarse to fine', () => {
  const layers = made.buildUps.layers.filter(({ layer }) => layer === 'prime' || layer === 'undercoat')
  const rows = sandingRows(layers)
  expect(rows.map(({ layer, grit }) => `${layer} ${grit}`)).toEqual([
    'prime P80',
    'prime P120',
    'undercoat P220',
  ])
  const last = rows.find(({ grit }) => grit === 'P120')!
  const area = layers.filter(({ layer }) => layer === 'prime').reduce((sum, { areaM2 }) => sum + areaM2, 0)
  expect(last.areaM2).toBeCloseTo(area, 9)
  // Default rates of the trade: 0.15 h and half a disc a square metre for P120.
  expect(last.hours.value).toBeCloseTo(0.15 * area, 9)
  expect(last.discs).toBeCloseTo(0.5 * area, 9)
})

it('tells the sanding between coats behind that below the layer, once for each coat but the first', () => {
  const gloss = made.buildUps.layers.filter(({ layer }) => layer === 'hull-gloss')
  const rows = sandingRows(gloss)
  expect(rows.map(({ when, grit }) => `${when} ${grit}`)).toEqual(['before P320', 'between P400'])
  const [before, between] = rows
  expect(gloss[0]!.coats).toBeGreaterThan(1)
  expect(between!.areaM2).toBeCloseTo(before!.areaM2 * (gloss[0]!.coats - 1), 9)
})

it('keeps what comes before the layer ahead of a coarser paper between its coats', () => {
  const [gloss] = made.buildUps.layers.filter(({ layer }) => layer === 'hull-gloss')
  const coarse = { ...gloss!, between: { ...gloss!.between!, grit: 'P220' } }
  expect(sandingRows([coarse]).map(({ when }) => when)).toEqual(['before', 'between'])
})

it('is the work that the steps hold, between coats too', () => {
  const steps = made.steps.steps
    .filter(({ kind }) => kind === 'sand' || kind === 'sand-between')
    .reduce((sum, { hours }) => sum + hours, 0)
  const rows = sandingRows(made.buildUps.layers).reduce((sum, { hours }) => sum + hours.value, 0)
  expect(steps).toBeCloseTo(rows, 9)
})
