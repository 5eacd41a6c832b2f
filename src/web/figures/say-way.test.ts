import { describe, expect, it } from 'vitest'
import { type FigureRef, plan, tellWay } from '#plan'
import { createWords, labelOf } from '#words'
import { sampleInput } from '../../../test/support/samples.ts'
import { unsureParts } from './firm-up.tsx'
import { allParts, partLabel, sayWay } from './say-way.ts'

const input = sampleInput('open-powerboat')
const made = plan(input)
const speaker = {
  words: createWords({ locale: 'en-GB', system: 'metric' }),
  other: createWords({ locale: 'en-GB', system: 'us' }),
  currency: 'EUR',
}
const wayOf = async (ref: FigureRef) => {
  const way = await tellWay({ ...input, plan: made }, ref)
  if (!way) throw new Error(`way: none, got ${JSON.stringify(ref)}`)
  return way
}
const told = async (ref: FigureRef) => sayWay(await wayOf(ref), speaker)
const plain = (text: string | undefined): string => (text ?? '').replaceAll(/[\u00a0\u2009\u202f]/g, ' ')

const every: readonly FigureRef[] = [
  ...made.surfaces.zones.flatMap(({ id }): FigureRef[] => [
    { kind: 'zone area', zone: id },
    { kind: 'zone litres', zone: id },
  ]),
  ...made.marks.zones.map(({ id }): FigureRef => ({ kind: 'zone area', zone: id })),
  ...made.stores.items.flatMap(({ sheet }): FigureRef[] => [
    { kind: 'store', sheet, of: 'reserve' },
    { kind: 'store', sheet, of: 'left' },
  ]),
  ...made.stores.consumables.map(
    ({ id, sheet }): FigureRef => ({ kind: 'consumable', id, ...(sheet ? { sheet } : {}) }),
  ),
  ...(made.money?.lines ?? [])
    .filter(({ coins }) => coins !== undefined)
    .map(({ id }): FigureRef => ({ kind: 'money line', line: id })),
  ...(made.money?.changes ?? []).map(({ id }): FigureRef => ({ kind: 'change', change: id })),
  ...(['margin', 'net', 'tax', 'total', 'deposit'] as const).map(
    (of): FigureRef => ({ kind: 'money sum', of }),
  ),
]

describe('a way', () => {
  it('fills the figures of the walkthrough into its formula, in both systems of units', async () => {
    const gloss = await told({ kind: 'layer litres', layer: 'deck-gloss', zones: ['side-decks'] })
    expect(plain(gloss.formula)).toBe('2.02 m² × 2 ÷ 14 m²/L')
    expect(plain(gloss.other)).toBe('9.74 fl oz')
    expect(gloss.parts?.map(({ label }) => label)).toContain('Coats')
    const area = await told({ kind: 'zone area', zone: 'side-decks' })
    expect(plain(area.formula)).toBe('2 × 3.6 m × 280 mm')
    const fairing = await told({ kind: 'layer litres', layer: 'fair-deck', zones: ['cockpit-sole'] })
    const spread = fairing.parts?.find(({ label }) => label.startsWith(labelOf('wayPart.spread')))
    expect(plain(spread?.formula)).toBe('100 % × (1 − 10 %) ÷ 1 mm')
  })

  it('has a word for every part, and says where each was read', async () => {
    const ways = await Promise.all(every.map(wayOf))
    const parts = ways.flatMap((way) => allParts([way.figure, ...way.parts]))
    const names = [...new Set(parts.map(({ name }) => name))]
    expect(names.length).toBeGreaterThan(40)
    for (const part of parts) expect(partLabel(part)).not.toMatch(/wayPart|[a-z][A-Z]|^[a-z]+\./)
    for (const name of names) expect(labelOf(`wayPart.${name}`), name).toMatch(/^[A-Z]/)
    const fairing = await told({ kind: 'layer litres', layer: 'fair-deck', zones: ['cockpit-sole'] })
    const solids = fairing.parts?.find(({ label }) => label.startsWith(labelOf('wayPart.solids')))
    expect(solids).toMatchObject({ certainty: 'assumed', source: labelOf('waySource.assumed') })
  })

  it('points at the cells of its guesses, worst first', async () => {
    const fairing = await wayOf({ kind: 'layer litres', layer: 'fair-deck', zones: ['cockpit-sole'] })
    const open = unsureParts(fairing.parts)
    expect(open[0]).toMatchObject({ certainty: 'assumed', at: { section: 'sheets', key: 'volumeSolids' } })
    expect(unsureParts((await wayOf({ kind: 'money sum', of: 'total' })).parts)).toEqual([])
  })
})
