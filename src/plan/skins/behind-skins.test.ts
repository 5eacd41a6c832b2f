import { describe, expect, it } from 'vitest'
import { type Plan, type PlanInput, plan } from '#plan'
import { sampleInput } from '../../../test/support/samples.ts'
import { createMemory } from '../remember.ts'
import { behindSkins } from './behind-skins.ts'

const sample = { ...sampleInput('cruiser-topsides'), log: [] }
type Behind = NonNullable<PlanInput['work']['zones'][number]['behind']>

function standing(shelter: 'open' | 'shed', behind?: Behind): Plan {
  const { work } = sample
  const zones = work.zones.map((zone) => (zone.id === 'port' && behind ? { ...zone, behind } : zone))
  return plan({ ...sample, work: { ...work, zones, place: { ...work.place, shelter } } })
}

const at = (of: Plan, place: string) => of.conditions.air.find(({ key }) => key === place)!

describe('a tank behind a side', () => {
  const [bare, tank] = [standing('open'), standing('open', 'tank')]
  const [bareC, tankC] = [at(bare, 'port').surfaceC, at(tank, 'port').surfaceC]

  it('never makes the coldest skin warmer, and keeps it cold when the air warms', () => {
    for (const [hour, skinC] of tankC.entries()) expect(skinC).toBeLessThanOrEqual(bareC[hour]! + 1e-9)
    const gaps = tankC.map((skinC, hour) => bareC[hour]! - skinC)
    expect(Math.max(...gaps)).toBeGreaterThan(1)
    // The air of the boat is ahead of the tank by 20 hours: the gap is widest in the warm of a day.
    const worst = gaps.indexOf(Math.max(...gaps))
    const clock = (at(tank, 'port').firstMinute / 60 + worst) % 24
    expect(clock).toBeGreaterThan(9)
    expect(clock).toBeLessThan(18)
  })

  it('leaves a warmest part beside it, and other places alone', () => {
    const warm = at(tank, 'port').warmestC!
    for (const [hour, skinC] of tankC.entries()) expect(warm[hour]).toBeGreaterThanOrEqual(skinC - 1e-9)
    expect(at(bare, 'port').warmestC).toBeUndefined()
    for (const key of ['starboard', 'transom', 'boat'])
      expect(at(tank, key).surfaceC, key).toEqual(at(bare, key).surfaceC)
  })

  it('lies behind the boot stripe on it too', () => {
    const both = at(tank, 'port').surfaceC.map((skinC, hour) =>
      Math.min(skinC, at(tank, 'starboard').surfaceC[hour]!),
    )
    expect(at(tank, 'sides').surfaceC).toEqual(both)
  })

  it('takes hours away, and gives none', () => {
    const goes = (of: Plan) =>
      of.conditions.zones
        .filter(({ place }) => place === 'port')
        .flatMap(({ verdicts }) => verdicts.map((verdict) => verdict === 'go'))
    const [without, beside] = [goes(bare), goes(tank)]
    expect(without.length).toBeGreaterThan(0)
    expect(beside.filter(Boolean).length).toBeLessThan(without.filter(Boolean).length)
  })

  it('counts for the whole boat in a shed', () => {
    const [plain, cold] = [standing('shed'), standing('shed', 'tank')]
    const gaps = at(cold, 'boat').surfaceC.map((skinC, hour) => at(plain, 'boat').surfaceC[hour]! - skinC)
    expect(Math.min(...gaps)).toBeGreaterThan(-1e-9)
    expect(Math.max(...gaps)).toBeGreaterThan(0.5)
  })
})

it('an engine keeps the skin cold for less long than a tank', () => {
  const coldBy = (behind: Behind) => {
    const skinC = at(standing('open', behind), 'port').surfaceC
    return at(standing('open'), 'port').surfaceC.reduce((sum, bareC, hour) => sum + bareC - skinC[hour]!, 0)
  }
  expect(coldBy('engine')).toBeGreaterThan(0.1 * coldBy('tank'))
  expect(coldBy('engine')).toBeLessThan(0.9 * coldBy('tank'))
})

it('what stands behind both sides stands behind each', () => {
  const { surfaces } = plan(sample)
  const [side] = surfaces.zones
  const both = { ...surfaces, zones: [{ ...side!, id: 'round', side: 'both' as const }] }
  const [zone] = sample.work.zones
  const input = { zones: [{ ...zone!, id: 'round', behind: 'tank' as const }], surfaces: both }
  const found = behindSkins(createMemory().begin().run, { ...input, shelter: 'open' })
  expect(found).toEqual({ port: ['bare', 'tank'], starboard: ['bare', 'tank'] })
})

it('foam behind a side stands all along it, and lets the skin swing more', () => {
  const [bare, foam] = [standing('open'), standing('open', 'foam')]
  const swing = ({ surfaceC }: { readonly surfaceC: readonly number[] }) =>
    Math.max(...surfaceC) - Math.min(...surfaceC)
  expect(at(foam, 'port').warmestC).toBeUndefined()
  expect(swing(at(foam, 'port'))).toBeGreaterThan(swing(at(bare, 'port')))
})
