/** Mix: how much base, hardener and thinner make a pour, by volume and by weight. */
import { type Mix, type MixDensities, mixMasses, mix as mixOf } from '#core/coating'
import type { Note } from '#core/note'
import type { SumField } from './field.ts'
import { thinnerInput } from './film-inputs.ts'
import type { Given } from './given.ts'
import { defineSum, how, result, type SumResult } from './sum.ts'

const source = 'practice of two-part topcoats: thinner as a share of base and hardener together'

const densityInput = (name: string, part: string): SumField => ({
  name,
  dimension: 'density',
  required: false,
  limits: { over: 0, atMost: 5000 },
  doc: `Density of the ${part}, to mix by weight.`,
  example: '1.2 kg/L',
})

export const mix = defineSum({
  id: 'mix',
  doc: 'Base, hardener and thinner of a pour.',
  inputs: [
    {
      name: 'volume',
      dimension: 'volume',
      required: true,
      limits: { over: 0, atMost: 1 },
      doc: 'Paint wanted ready to use, thinner included.',
      example: '1 qt',
    },
    {
      name: 'ratio',
      dimension: 'ratio',
      required: true,
      limits: { over: 0, atMost: 1000 },
      doc: 'Base to hardener by volume.',
      example: '2:1',
    },
    thinnerInput,
    {
      name: 'additive',
      dimension: 'volumeShare',
      required: false,
      limits: { atLeast: 0, atMost: 2 },
      doc: 'Beads or grit by bulk volume of the ready paint, stirred in on top.',
      example: '4 fl oz/qt',
    },
    densityInput('densityA', 'base'),
    densityInput('densityB', 'hardener'),
    densityInput('densityThinner', 'thinner'),
  ],
  work: (given) => {
    const volume = given.number('volume')
    const parts = {
      ratio: { base: given.number('ratio'), hardener: 1 },
      thinnerShare: given.number('thinner'),
      additiveShare: given.optional('additive') ?? 0,
    }
    const ready = mixOf({ ...parts, readyVolume: volume })
    const other = mixOf({ ...parts, partsVolume: volume })
    const thinned = parts.thinnerShare > 0
    const weighed = weigh(given, ready)
    return {
      results: [...volumes(ready, ''), ...weighed.results, ...(thinned ? volumes(other, 'other') : [])],
      how: [
        how('sums.mixParts', {
          readyMl: ready.readyVolume * 1e6,
          thinnerShare: parts.thinnerShare,
          partsMl: ready.partsVolume * 1e6,
        }),
        how('sums.mixSplit', {
          partsMl: ready.partsVolume * 1e6,
          ratio: parts.ratio.base,
          baseMl: ready.baseVolume * 1e6,
          hardenerMl: ready.hardenerVolume * 1e6,
          thinnerMl: ready.thinnerVolume * 1e6,
        }),
      ],
      notes: [
        ...turnedNotes(parts.ratio.base),
        ...readingNotes(ready, other, thinned),
        ...additiveNotes(ready),
        ...weighed.notes,
      ],
      sources: [source],
    }
  },
})

/** Hardly anything takes three times as much hardener as base, but it is what was typed. */
const leastBase = 1 / 3

function turnedNotes(ratio: number): Note[] {
  return ratio < leastBase
    ? [{ code: 'sums.mixTurned', severity: 'caution', data: { hardener: 1 / ratio } }]
    : []
}

/** `base…` keys, or `otherBase…` with a prefix. */
function volumes(poured: Mix, prefix: string): SumResult[] {
  const key = (name: string) =>
    prefix === '' ? `${name}Ml` : `${prefix}${name[0]?.toUpperCase()}${name.slice(1)}Ml`
  return [
    result(key('base'), poured.baseVolume * 1e6, 'volume'),
    result(key('hardener'), poured.hardenerVolume * 1e6, 'volume'),
    result(key('thinner'), poured.thinnerVolume * 1e6, 'volume'),
    result(key('ready'), poured.readyVolume * 1e6, 'volume'),
    ...(poured.additiveVolume > 0 ? [result(key('additive'), poured.additiveVolume * 1e6, 'volume')] : []),
  ]
}

type Weighed = { readonly results: readonly SumResult[]; readonly notes: readonly Note[] }

/** Masses when every part that is poured has a density; a note when only some have. */
function weigh(given: Given, poured: Mix): Weighed {
  const base = given.optional('densityA')
  const hardener = given.optional('densityB')
  const thinner = poured.thinnerVolume > 0 ? given.optional('densityThinner') : 0
  if (base !== undefined && hardener !== undefined && thinner !== undefined)
    return { results: masses(poured, { base, hardener, thinner }), notes: [] }
  const some = base !== undefined || hardener !== undefined || given.optional('densityThinner') !== undefined
  if (!some) return { results: [], notes: [] }
  const missing = base === undefined ? 'densityA' : hardener === undefined ? 'densityB' : 'densityThinner'
  return {
    results: [],
    notes: [{ code: 'sums.mixDensityMissing', severity: 'missing', data: { field: missing } }],
  }
}

function masses(poured: Mix, densities: MixDensities): SumResult[] {
  const { baseMass, hardenerMass, thinnerMass } = mixMasses(poured, densities)
  return [
    result('baseG', baseMass * 1000, 'mass'),
    result('hardenerG', hardenerMass * 1000, 'mass'),
    result('thinnerG', thinnerMass * 1000, 'mass'),
    result('readyG', (baseMass + hardenerMass + thinnerMass) * 1000, 'mass'),
  ]
}

function readingNotes(ready: Mix, other: Mix, thinned: boolean): Note[] {
  const byVolume: Note = { code: 'sums.mixByVolume', severity: 'info', data: {} }
  if (!thinned) return [byVolume]
  const data = {
    readyMl: ready.readyVolume * 1e6,
    otherPartsMl: other.partsVolume * 1e6,
    otherReadyMl: other.readyVolume * 1e6,
  }
  return [{ code: 'sums.mixReadyVolume', severity: 'assumed', data, source }, byVolume]
}

function additiveNotes(poured: Mix): Note[] {
  if (poured.additiveVolume === 0) return []
  return [
    {
      code: 'sums.mixAdditiveOnTop',
      severity: 'info',
      data: { additiveMl: poured.additiveVolume * 1e6, readyMl: poured.readyVolume * 1e6 },
    },
  ]
}
