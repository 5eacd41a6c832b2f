import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, withCell } from '../../../test/support/samples.ts'

const raw = sampleRaw('open-powerboat')
const planOf = (document: typeof raw) => plan(planInput(projectRaw(document), undefined))
const first = planOf(raw)
const filled = first.buildUps.layers.find(({ role }) => role === 'filler' || role === 'fairing')!
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
    expect(layer.ladder).toEqual(['P80', 'P120', 'P220', 'P320'])
    const step = sanding(made, over)
    const [p80, p120, p220, p320] = [80, 120, 220, 320].map(
      (grit) => 0.001 * ({ 80: 200, 120: 150, 220: 120, 320: 120 }[grit] ?? 0),
    )
    // Person-hours a square metre of the trade's default rates: 0.20, 0.15, 0.12, 0.12.
    expect(step.hours).toBeCloseTo((p80! + p120! + p220!) * filled.areaM2 + p320! * step.areaM2!, 9)
    expect(step.filledM2).toBe(filled.areaM2)
  })

  it('is one grit where nothing was filled', () => {
    const smooth = first.buildUps.layers.find(({ role }) => role === 'finish')!
    expect(smooth.ladder).toHaveLength(1)
    expect(sanding(first, smooth).grits).toBeUndefined()
  })

  it('wears down the discs of every step, the coarse ones by what was filled', () => {
    const count = (of: typeof first, id: string) =>
      of.stores.consumables.find((one) => one.id === id)?.amount ?? 0
    const [short, long] = [withGrit(over.layer, 'P80'), withGrit(over.layer, 'P120')]
    expect(count(long, 'disc-120')).toBeGreaterThan(count(short, 'disc-120'))
    expect(count(long, 'disc-80')).toBeLessThan(count(short, 'disc-80'))
    expect(count(long, 'disc-80')).toBeGreaterThan(0)
  })

  it('is told where its last scratches show through all coats of the layer', () => {
    const gloss = first.buildUps.layers.find(({ role }) => role === 'finish')!
    const shown = (of: typeof first) =>
      of.notes.filter(({ code, data }) => code === 'buildup.scratchesShow' && data.layer === gloss.layer)
    expect(shown(first)).toEqual([])
    expect(shown(withGrit(gloss.layer, 'P80'))[0]?.data).toMatchObject({ grit: 'P80', finer: 'P120' })
  })
})
