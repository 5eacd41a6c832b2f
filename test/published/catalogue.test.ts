// Shipped figures against the figures of the sources, typed here a second time.
import { describe, expect, it } from 'vitest'
import { catalogue, type SheetId } from '#catalogue'
import type { Dimension } from '#units'
import { read } from '#units'
import { checkPublished, figure } from './published.ts'

const si = (text: string | undefined, dimension: Dimension): number => {
  const reading = read(text ?? '', dimension)
  return reading.ok ? reading.quantity.value : Number.NaN
}

const sizes = catalogue.abrasives as Readonly<Record<string, (typeof catalogue.abrasives)['P40'] | undefined>>
const grainUm = (grade: string): number => si(sizes[grade]?.cells.size, 'length') * 1e6

checkPublished('abrasives', {
  fepaUm: (given) => grainUm(`P${figure(given, 'grade')}`),
  camiUm: (given) => grainUm(String(figure(given, 'grade'))),
  camiOverFepa: (given) => grainUm(String(figure(given, 'cami'))) / grainUm(`P${figure(given, 'fepa')}`),
})

describe('grain sizes', () => {
  it('have the fine grade 400 of one system finer than P600 of the other', () => {
    expect(grainUm('400')).toBeLessThan(grainUm('P600'))
  })
})

const { lossRoller, lossRough, lossUneven, lossWind } = catalogue.limits.cells
const lossPct = (cause: number): number =>
  si([lossRoller, lossRough, lossUneven, lossWind][cause - 1], 'share') * 100

checkPublished('spread-losses', {
  below: (given) => Math.max(0, figure(given, 'leastPct') - lossPct(figure(given, 'cause'))),
  above: (given) => Math.max(0, lossPct(figure(given, 'cause')) - figure(given, 'mostPct')),
})

const sheetOrder: readonly SheetId[] = [
  'one-part-enamel',
  'two-part-finish',
  'epoxy-primer',
  'epoxy-high-build',
  'epoxy-tie',
  'epoxy-fairing',
  'gelcoat',
  'textured-acrylic',
  'one-part-deck',
]

/** m²/L of mixed paint without thinner, nothing lost. */
function spread(nr: number): number {
  const id = sheetOrder[nr - 1]
  if (id === undefined) return Number.NaN
  const { coverage, volumeSolids, dryFilm } = catalogue.sheets[id].cells
  if (coverage !== undefined) return si(coverage, 'coverage') / 1000
  return si(volumeSolids, 'share') / si(dryFilm, 'length') / 1000
}

checkPublished('generic-spread', {
  below: (given) => Math.max(0, figure(given, 'least') - spread(figure(given, 'sheet'))),
  above: (given) => Math.max(0, spread(figure(given, 'sheet')) - figure(given, 'most')),
  mixedMlPerM2: (given) => {
    const thinner = si(catalogue.sheets['two-part-finish'].cells.thinnerShare, 'share')
    return ((1 + thinner) / spread(figure(given, 'sheet'))) * 1000
  },
})
