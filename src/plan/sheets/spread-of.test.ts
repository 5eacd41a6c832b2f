/** How far paint goes: measured spreads of the wall, texture, sanding, bead and solvent. */
import { describe, expect, it } from 'vitest'
import { catalogue, type SheetId } from '#catalogue'
import { filmLeft, meanTexture } from '#core/coating'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, withCell } from '../../../test/support/samples.ts'
import { readCatalogue } from '../read-catalogue.ts'
import { resolveSheet } from './resolve-sheet.ts'
import { defaultMethod, lossOf, spreadOf } from './spread-of.ts'

const known = readCatalogue.run({ catalogue })

/** The band of a can of which nobody knows more than its kind, m²/L. */
function bandOf(like: SheetId, under: 'smooth' | 'grit' = 'smooth'): readonly [number, number] {
  const { sheet } = resolveSheet({ id: 'can', like }, known.sheets.get(like))
  const { spreadBand } = spreadOf({
    sheet,
    own: {},
    dryFilmM: sheet.dryFilmM,
    lossShare: lossOf(defaultMethod(sheet), known),
    texture: { smooth: { value: 1, certainty: 'worked' as const }, grit: known.textures.grit }[under],
  })
  return [spreadBand![0] / 1000, spreadBand![1] / 1000]
}

// Amateur and yard logs of wet amount over counted area, a can taken as 750 ml and as a US quart.
const measured: readonly (readonly [record: string, like: SheetId, least: number, most: number])[] = [
  ['150 ft² a can, ran', 'two-part-finish', 14.7, 18.6],
  ['225 ft² a can, too thin', 'two-part-finish', 22, 28],
  ['180 ft² a can, good', 'two-part-finish', 17.7, 22.3],
  ['20 fl oz on hull and transom of 17 m²', 'two-part-finish', 29, 29],
  ['a gallon for three coats of primer on the same', 'epoxy-primer', 13, 13],
]

describe('spreads that were measured at the wall', () => {
  it.each(measured)('%s lies in the band of its kind', (_record, like, least, most) => {
    const [from, until] = bandOf(like)
    expect(least).toBeGreaterThanOrEqual(from)
    expect(most).toBeLessThanOrEqual(until)
  })

  it('under 2.5 m²/L over broadcast sand: far under the band of the smooth, inside that of grit', () => {
    expect(bandOf('one-part-enamel')[0]).toBeGreaterThan(2.5)
    const [from, until] = bandOf('one-part-enamel', 'grit')
    expect(2.5).toBeGreaterThanOrEqual(from)
    expect(2.5).toBeLessThanOrEqual(until)
  })
})

describe('texture and sanding', () => {
  it('take the mean over coats, the first on what was there, the others on their own bead', () => {
    expect(meanTexture({ coats: 1, under: 1, own: 4 })).toBe(1)
    expect(meanTexture({ coats: 2, under: 1, own: 4 })).toBe(2.5)
    expect(meanTexture({ coats: 3, under: 4, own: 1 })).toBe(4)
  })

  it('leave of three coats of 100 µm, half sanded off each, what was netted of two', () => {
    // Bought for three, netting two: trade record of high-build primer.
    expect(filmLeft({ dryFilm: 100e-6, coats: 3, between: 0.25, after: 0.5 }) * 1e6).toBeCloseTo(200, 9)
    expect(filmLeft({ dryFilm: 20e-6, coats: 3, between: 0, after: 0 }) * 1e6).toBeCloseTo(60, 9)
  })
})

const raw = sampleRaw('deck-only')
const made = plan(planInput(projectRaw(raw), undefined))
const beaded = made.buildUps.layers.find(({ additiveShare, coats }) => additiveShare > 0 && coats > 1)

describe('on the deck of the sample', () => {
  it('bead makes the later coats of its layer eat four times as much', () => {
    expect(beaded).toBeDefined()
    const { coats, texture } = beaded!
    expect(texture.value).toBeCloseTo((1 + (coats - 1) * 4) / coats, 12)
  })

  it('one’s own measure replaces the guess, texture and losses with it', () => {
    const own = plan(
      planInput(
        projectRaw(withCell(raw, 'work', ['layers', beaded!.layer, 'coverage'], '5 m²/L')),
        undefined,
      ),
    )
    const layer = own.buildUps.layers.find(({ id }) => id === beaded!.id)!
    expect(layer.spreadM2PerM3?.value).toBe(5000)
    expect(layer.texture.value).toBe(1)
    expect(layer.spreadBand).toBeUndefined()
  })

  it('bead that is strewn is bought by weight: area by coats by so much a square metre', () => {
    const strewn = plan(
      planInput(
        projectRaw(withCell(raw, 'work', ['layers', beaded!.layer, 'broadcast'], '300 g/m²')),
        undefined,
      ),
    )
    const kg = strewn.quantities.layers
      .filter(({ layer }) => layer === beaded!.layer)
      .reduce((sum, { areaM2, coats }) => sum + areaM2 * coats * 0.3, 0)
    const item = strewn.stores.consumables.find(({ id }) => id === 'strewn-bead')!
    expect(item.unit).toBe('kg')
    expect(item.amount).toBeGreaterThanOrEqual(kg)
    expect(item.amount - kg).toBeLessThan(0.1)
  })
})

describe('solvent', () => {
  const gloss = plan(planInput(projectRaw(sampleRaw('open-powerboat')), undefined))
  const finish = gloss.buildUps.layers.find(({ role }) => role === 'finish')!
  const told = (rules: string, cells: Readonly<Record<string, string>>) => {
    const document = Object.entries(cells).reduce(
      (made, [key, text]) => withCell(made, 'work', ['sheets', finish.sheet, key], text),
      withCell(sampleRaw('open-powerboat'), 'work', ['place', 'vocRules'], rules),
    )
    return plan(planInput(projectRaw(document), undefined)).notes.filter(
      ({ code, data }) => code === 'buildup.solventOver' && data.layer === finish.layer,
    )
  }
  const sheet = { voc: '420 g/L', thinnerShare: '25 %', thinnerMost: '33 %', densityThinner: '0.85 kg/L' }

  it('of the thinned paint is held against the rules of the place, and says how much thinner they leave', () => {
    // (420 + 0.25 x 850) / 1.25 = 506 g/L; (420 + 850 y) / (1 + y) = 490 gives y = 70 / 360.
    const [note] = told('US guideline', sheet)
    expect(note?.data.vocKgPerM3).toBeCloseTo((420 + 0.25 * 850) / 1.25, 9)
    expect(note?.data.limitKgPerM3).toBeCloseTo(490, 9)
    expect(note?.data.thinnerMostShare).toBeCloseTo(70 / 360, 9)
  })

  it('says nothing where no rules are chosen or they are kept', () => {
    expect(told('none', sheet)).toEqual([])
    expect(told('Hong Kong', sheet)).toEqual([])
    expect(told('US guideline', { ...sheet, thinnerShare: '10 %' })).toEqual([])
  })

  it('says so where it is over without any thinner', () => {
    const [note] = told('US guideline', { ...sheet, voc: '520 g/L' })
    expect(note?.data.isOverUnthinned).toBe(true)
  })
})
