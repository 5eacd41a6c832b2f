import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, withCell } from '../../../test/support/samples.ts'
import { readCatalogue } from '../read-catalogue.ts'
import { ladderOf } from './ladder-of.ts'

const raw = sampleRaw('open-powerboat')
const planOf = (document: typeof raw) => plan(planInput(projectRaw(document), undefined))
const first = planOf(raw)
// A zone that was filled, and where the survey found nothing.
const filled = first.buildUps.layers.find(({ role, zone }) => role === 'filler' && zone === 'console')!
const over = first.buildUps.layers.filter(({ zone }) => zone === filled.zone)[
  first.buildUps.layers.filter(({ zone }) => zone === filled.zone).indexOf(filled) + 1
]!
const withGrit = (layer: string, grit: string) =>
  planOf(withCell(raw, 'work', ['layers', layer, 'sandBefore'], grit))
const sanding = (of: typeof first, { zone, layer }: { readonly zone: string; readonly layer: string }) =>
  of.steps.steps.find((step) => step.kind === 'sand' && step.zone === zone && step.layer === layer)!

describe('sanding step by step', () => {
  it('cuts filler with P80 and goes on by steps of two at most, on the filled part alone', () => {
    const made = withGrit(over.layer, 'P320')
    const layer = made.buildUps.layers.find(({ id }) => id === over.id)!
    expect(layer.ladder.map(({ grit }) => grit)).toEqual(['P80', 'P120', 'P220', 'P320'])
    const step = sanding(made, over)
    const [p80, p120, p220, p320] = [80, 120, 220, 320].map(
      (grit) => 0.001 * ({ 80: 200, 120: 150, 220: 120, 320: 120 }[grit] ?? 0),
    )
    // Person-hours a square metre of the trade's default rates: 0.20, 0.15, 0.12, 0.12.
    expect(step.hours).toBeCloseTo((p80! + p120! + p220!) * filled.areaM2 + p320! * step.areaM2!, 9)
    expect(step.rungs).toEqual(layer.ladder)
  })

  it('is one grit where nothing was filled', () => {
    const smooth = first.buildUps.layers.find(({ role }) => role === 'finish')!
    expect(smooth.ladder).toHaveLength(1)
    expect(sanding(first, smooth).rungs).toBeUndefined()
  })

  it('wears down the discs of every step, the coarse ones by what was filled', () => {
    const count = (of: typeof first, id: string) =>
      of.stores.consumables.find((one) => one.id === id)?.amount ?? 0
    const [short, long] = [withGrit(over.layer, 'P80'), withGrit(over.layer, 'P120')]
    expect(count(long, 'disc-120')).toBeGreaterThan(count(short, 'disc-120'))
    expect(count(long, 'disc-80')).toBeLessThan(count(short, 'disc-80'))
    expect(count(long, 'disc-80')).toBeGreaterThan(0)
  })

  describe('begins with what the work before left', () => {
    const bare = first.buildUps.layers.find(
      ({ zone, role, layer }) =>
        role === 'primer' && first.buildUps.layers.find((one) => one.zone === zone)?.layer === layer,
    )!
    const ladderWith = (document: typeof raw) =>
      planOf(document)
        .buildUps.layers.find(({ id }) => id === bare.id)!
        .ladder.map(({ grit, areaM2 }) => [grit, areaM2])
    const zoned = (key: string, text: string) => withCell(raw, 'work', ['zones', bare.zone, key], text)

    it('the scratches of who sanded before, over all of it', () => {
      const ladder = ladderWith(zoned('sandedWith', 'P80'))
      expect(ladder).toEqual([['P120', bare.areaM2]])
      expect(ladderWith(zoned('sandedWith', 'P40'))).toEqual([['P80', bare.areaM2], ['P120', bare.areaM2]]) // biome-ignore format: a row
    })

    it('the cut of mended places, dished to three times a hole', () => {
      const hole = {
        zone: bare.zone,
        kind: 'hole',
        count: '4',
        size: '10 mm',
        hours: '1 h',
        sheet: bare.sheet,
      }
      const document = Object.entries(hole).reduce(
        (made, [key, text]) => withCell(made, 'work', ['findings', 'holes', key], text),
        raw,
      )
      const [cut] = ladderWith(document)
      expect(cut?.[0]).toBe('P80')
      expect(cut?.[1]).toBeCloseTo(4 * (Math.PI / 4) * 0.03 ** 2, 12)
    })
  })

  it('goes on from the scratches of the grinder where no filler hides them', () => {
    const ground = { patternOff: 3, mendedM2: 0, sandedWith: '' } as const
    const known = readCatalogue.run({ catalogue })
    const told = (filledM2: number) =>
      ladderOf({ areaM2: 5, filledM2, ground, sandBefore: 'P120' }, known).map(({ grit, areaM2 }) => [
        grit,
        areaM2,
      ])
    // The grinder left P40 on 3 m²: P80 takes it out; 2 m² of filler want their own P80.
    expect(told(0)).toEqual([['P80', 3], ['P120', 5]]) // biome-ignore format: a row
    expect(told(2)).toEqual([['P80', 3], ['P120', 5]]) // biome-ignore format: a row
    expect(told(3)).toEqual([['P80', 3], ['P120', 5]]) // biome-ignore format: a row
  })

  it('is told where its last scratches show through all coats of a layer that is no finish', () => {
    const tie = first.buildUps.layers.find(({ role }) => role === 'tie coat')!
    const shown = (of: typeof first) =>
      of.notes.filter(({ code, data }) => code === 'buildup.scratchesShow' && data.layer === tie.layer)
    expect(shown(first)).toEqual([])
    expect(shown(withGrit(tie.layer, 'P80'))[0]?.data).toMatchObject({ grit: 'P80', finer: 'P150' })
  })

  it('ends with P400 at the coarsest under a dark finish', () => {
    const gloss = first.buildUps.layers.find(({ role }) => role === 'finish')!
    const told = (shade: string, grit: string) =>
      planOf(
        withCell(
          withCell(raw, 'work', ['layers', gloss.layer, 'sandBefore'], grit),
          'work',
          ['sheets', gloss.sheet, 'shade'],
          shade,
        ),
      ).notes.filter(({ code, data }) => code === 'buildup.scratchesUnderDark' && data.layer === gloss.layer)
    expect(told('light', 'P320')).toEqual([])
    expect(told('dark', 'P400')).toEqual([])
    expect(told('dark', 'P320')).toHaveLength(1)
    expect(told('dark', 'P320')[0]?.data).toMatchObject({ grit: 'P320', finer: 'P400' })
  })
})
