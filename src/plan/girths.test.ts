import { describe, expect, it } from 'vitest'
import type { RawDocument } from '#job'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw } from '../../test/support/samples.ts'
import { tellWay } from './ways/index.ts'

const raw = sampleRaw('open-powerboat')

const withGirths = (rows: readonly Readonly<Record<string, string>>[]): RawDocument => ({
  ...raw,
  work: { ...raw.work, girths: Object.fromEntries(rows.map((row, k) => [`girth-${k}`, row])) },
})
const inputOf = (document: RawDocument) => planInput(projectRaw(document), undefined)
const planOf = (document: RawDocument) => plan(inputOf(document))
const zone = (of: ReturnType<typeof plan>, id: string) => of.surfaces.zones.find((one) => one.id === id)!

const row = (fromStern: number, side: string, scale = 1) => ({
  fromStern: `${fromStern} m`,
  side,
  sheerToWater: `${(0.98 * scale).toFixed(3)} m`,
  waterToChine: '0.10 m',
})
const five = [0.5, 2, 3.5, 5, 6.5].map((x) => row(x, 'port'))

describe('girths off a tape', () => {
  it('measure the side they were read on, and leave the other as it was drawn', () => {
    const [before, after] = [planOf(raw), planOf(withGirths(five))]
    expect(zone(after, 'topsides-port')).toMatchObject({ how: 'girths', certainty: 'measured' })
    expect(zone(after, 'topsides-starboard')).toEqual(zone(before, 'topsides-starboard'))
    expect(zone(after, 'topsides-port').areaM2).not.toBeCloseTo(zone(before, 'topsides-port').areaM2, 1)
    // A girth a fifth larger everywhere is a fifth more area, but for the part below the waterline.
    const wider = planOf(withGirths(five.map((_, k) => row([0.5, 2, 3.5, 5, 6.5][k]!, 'port', 1.2))))
    const share = zone(wider, 'topsides-port').areaM2 / zone(after, 'topsides-port').areaM2
    expect(share).toBeCloseTo((0.98 * 1.2 + 0.1) / 1.08, 6)
  })

  it('of both sides count for each', () => {
    const made = planOf(withGirths(five.map(({ side: _side, ...rest }) => rest)))
    expect(zone(made, 'topsides-port').areaM2).toBeCloseTo(zone(made, 'topsides-starboard').areaM2, 9)
    expect(zone(made, 'topsides-starboard').how).toBe('girths')
  })

  it('are typical with three, and not used with two or with a part missing', () => {
    expect(zone(planOf(withGirths(five.slice(0, 3))), 'topsides-port').certainty).toBe('typical')
    const two = planOf(withGirths(five.slice(0, 2)))
    expect(zone(two, 'topsides-port').how).toBe('surface')
    expect(two.notes.map(({ code }) => code)).toContain('surfaces.girthsTooFew')
    const holed = five.map(({ waterToChine: _, ...rest }) => rest)
    expect(zone(planOf(withGirths(holed)), 'topsides-port').how).toBe('surface')
  })

  it('say how the area came about', () => {
    const document = withGirths(five)
    const input = inputOf(document)
    const way = tellWay({ ...input, plan: plan(input) }, { kind: 'zone area', zone: 'topsides-port' })
    expect(way).toMatchObject({ how: { code: 'way.girthSurface' } })
    expect(JSON.stringify(way)).toContain('girths')
  })
})
