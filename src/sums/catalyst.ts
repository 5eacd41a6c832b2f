/** Catalyst: peroxide for polyester, vinylester and gelcoat, in grams first. */
import { catalyst as catalystOf } from '#core/coating'
import type { Note } from '#core/note'
import { defineSum, how, result } from './sum.ts'

const guides = 'published guides to polyester repair'
const nioshPage = 'NIOSH, methyl ethyl ketone peroxide'
/** Usual shares by mass in repair texts; makers' own limits run from 1 to 4 %. */
const usual = { leastShare: 0.01, mostShare: 0.02 }

export const catalyst = defineSum({
  id: 'catalyst',
  doc: 'Catalyst for a mass of polyester, vinylester or gelcoat.',
  inputs: [
    {
      name: 'resin',
      dimension: 'mass',
      required: true,
      limits: { over: 0, atMost: 1000 },
      doc: 'Mass of resin or gelcoat.',
      example: '500 g',
    },
    {
      name: 'percent',
      dimension: 'share',
      required: true,
      limits: { over: 0, atMost: 0.1 },
      doc: 'Catalyst by mass of resin; the resin maker’s limits rule.',
      example: '1.5 %',
    },
    {
      name: 'density',
      dimension: 'density',
      required: false,
      default: '1.1 kg/L',
      limits: { atLeast: 800, atMost: 1500 },
      doc: 'Density of the catalyst solution, for the measure in ml.',
      example: '1.1 kg/L',
    },
  ],
  work: (given) => {
    const batch = {
      resinMass: given.number('resin'),
      share: given.number('percent'),
      density: given.number('density'),
    }
    const { mass, volume } = catalystOf(batch)
    const figures = { resinG: batch.resinMass * 1000, catalystShare: batch.share, catalystG: mass * 1000 }
    const measured = { densityKgPerM3: batch.density, catalystMl: volume * 1e6 }
    return {
      results: [
        result('catalystG', mass * 1000, 'mass'),
        result('catalystMl', volume * 1e6, 'volume'),
        result('densityKgPerM3', batch.density, 'density'),
      ],
      how: [
        how('sums.catalystMass', figures),
        how('sums.catalystVolume', { catalystG: figures.catalystG, ...measured }),
      ],
      notes: [
        ...densityNotes(given.stated('density'), batch.density),
        ...shareNotes(batch.share),
        ...alwaysSaid,
      ],
      sources: [guides, nioshPage],
    }
  },
})

function densityNotes(stated: boolean, density: number): Note[] {
  if (stated) return []
  const data = { densityKgPerM3: density, leastKgPerM3: 1000, mostKgPerM3: 1200 }
  return [{ code: 'sums.catalystDensity', severity: 'assumed', data, source: guides }]
}

function shareNotes(catalystShare: number): Note[] {
  const code =
    catalystShare > usual.mostShare
      ? 'sums.catalystHigh'
      : catalystShare < usual.leastShare
        ? 'sums.catalystLow'
        : undefined
  return code ? [{ code, severity: 'notice', data: { catalystShare, ...usual }, source: guides }] : []
}

const alwaysSaid: readonly Note[] = [
  { code: 'sums.catalystMakerLimits', severity: 'caution', data: {}, source: 'assumed' },
  { code: 'sums.catalystNeverForCold', severity: 'caution', data: {}, source: 'assumed' },
  { code: 'sums.catalystNeverWith', severity: 'danger', data: {}, source: nioshPage },
]
