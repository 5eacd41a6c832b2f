import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { judge, outOfOrder, type Stack, type StackLayer } from '#core/coating'
import { families, newJob, type RawDocument, workFields } from '#job'
import { plan } from '#plan'
import {
  planInput,
  projectRaw,
  type SampleName,
  sampleInput,
  sampleRaw,
  withCell,
} from '../../../test/support/samples.ts'
import { bondBook, gritsIn } from '../read-bonds.ts'
import { sandingOf } from './stack-of.ts'

const book = bondBook(catalogue)
const grits = gritsIn(catalogue)

const judged = (raw: RawDocument) => plan(planInput(projectRaw(raw), undefined)).bonds
const codes = (raw: RawDocument) => judged(raw).notes.map(({ code }) => code)
const withWork = (sample: SampleName, path: readonly string[], text: string) =>
  withCell(sampleRaw(sample), 'work', path, text)

describe('the sample of a powerboat', () => {
  it('has no joint that fails, and knows old gelcoat, fillings and fresh paint apart', () => {
    const { stacks } = judged(sampleRaw('open-powerboat'))
    const on = (zone: string) =>
      stacks
        .find(({ zones }) => zones.includes(zone))
        ?.joints.filter(({ kind }) => kind === 'on surface')
        .map(({ under, layer, bond }) => [under, layer, bond.verdict])
    expect(on('topsides-port')).toEqual([
      ['ground', 'spot-fill', 'yes'],
      ['crazing-port', 'spot-fill', 'yes'],
      ['ground', 'prime', 'yes'],
      ['crazing-port', 'prime', 'yes'],
      ['spot-fill', 'prime', 'yes'],
      ['prime', 'undercoat', 'yes'],
      ['undercoat', 'hull-gloss', 'yes'],
    ])
    expect(on('boot-stripe')).toEqual([['hull-gloss', 'stripe', 'yes']])
    expect(on('panels-sole')).toEqual([['deck-gloss', 'grip', 'yes']])
  })

  it('is told what is wrong when gloss goes straight on gelcoat and filler', () => {
    const bare = ['prime', 'undercoat'].reduce(
      (raw, layer) => withCell(raw, 'work', ['layers', layer, 'zones'], 'hatches'),
      sampleRaw('open-powerboat'),
    )
    const fails = judged(bare).notes.filter(
      ({ code, data }) => code === 'buildup.bondFails' && String(data.zones).includes('Topsides'),
    )
    expect(fails.map(({ data }) => [data.name, data.bondReason, data.coatKinds])).toEqual(
      expect.arrayContaining([
        ['Topside gloss', 'solventSafeBase', 'epoxy primer'],
        ['Topside gloss', 'styreneLeft', 'epoxy primer'],
      ]),
    )
  })

  it('is told when its paint may not be below water', () => {
    const sunk = withWork('open-powerboat', ['zones', 'topsides-port', 'kind'], 'bottom')
    expect(codes(withCell(sunk, 'work', ['zones', 'topsides-port', 'area'], '8 m²'))).toContain(
      'buildup.bondFails',
    )
  })

  it('is told of sanding that is missing, too coarse and too fine', () => {
    const grit = (text: string) => codes(withWork('open-powerboat', ['layers', 'prime', 'sandBefore'], text))
    expect(grit('none')).toContain('buildup.notSanded')
    expect(grit('P40')).toContain('buildup.gritCoarse')
    expect(grit('P400')).toContain('buildup.gritFine')
    expect(grit('P120')).not.toContain('buildup.gritFine')
  })

  it('is told of gelcoat that is laid on too thick', () => {
    const raw = ['family', 'like', 'role'].reduce(
      (made, key) => withCell(made, 'work', ['sheets', 'stripe', key], key === 'role' ? 'finish' : 'gelcoat'),
      withWork('open-powerboat', ['layers', 'stripe', 'dryFilm'], '400 µm'),
    )
    expect(codes(raw)).toEqual(expect.arrayContaining(['buildup.filmOver', 'buildup.buildOver']))
  })
})

describe('an unknown coating', () => {
  const rub = (text: string) =>
    ['port', 'starboard', 'transom'].reduce(
      (raw, zone) => withCell(raw, 'work', ['zones', zone, 'solventRub'], text),
      sampleRaw('cruiser-topsides'),
    )
  const mayFail = (raw: RawDocument) =>
    judged(raw).notes.flatMap(({ code, data }) =>
      code === 'buildup.bondMayFail' ? [[data.layer, data.oldCoats]] : [],
    )

  it('is the cautious branch until solvent has told', () => {
    expect(mayFail(sampleRaw('cruiser-topsides'))).toEqual([['barrier', 'lacquer']])
    expect(mayFail(rub('no effect'))).toEqual([])
  })

  it('fails whatever it is once solvent has softened it, and the source that takes a barrier stands beside', () => {
    const told = judged(rub('softens')).notes.filter(({ data }) => data.layer === 'barrier')
    expect(told.map(({ code, severity }) => [code, severity])).toEqual(
      expect.arrayContaining([['buildup.bondFails', 'fault']]),
    )
    expect(told.map(({ code }) => code)).toContain('buildup.bondDisputed')
  })

  it('that solvent softens is not what somebody took it for', () => {
    const raw = withWork('open-powerboat', ['zones', 'transom', 'solventRub'], 'softens')
    expect(codes(raw)).toContain('buildup.rubContradicts')
    expect(codes(rub('softens'))).not.toContain('buildup.rubContradicts')
  })
})

describe('a new job', () => {
  it.each(['one-part', 'two-part'] as const)('of %s paint has a build-up without a fault', (paint) => {
    for (const existing of workFields.zones.fields.existing.choices) {
      const raw = newJob({
        name: 'Test',
        kind: 'open powerboat',
        length: '7.5 m',
        beam: '2.5 m',
        freeboard: '1 m',
        start: '2027-05-03',
        shelter: 'shed',
        timeZone: 'Europe/Paris',
        paint,
        deck: true,
        existing,
      })
      const faults = judged(raw).notes.filter(({ severity }) => severity === 'fault')
      const expected = ['acrylic', 'lacquer', 'antifouling'].includes(existing)
      expect(faults.length > 0, `${existing}: ${JSON.stringify(faults)}`).toBe(expected)
    }
  })
})

describe('the plan', () => {
  it.each(['open-powerboat', 'deck-only', 'cruiser-topsides'] as const)(
    'of %s dewaxes before any paper and fills pinholes before the next coat',
    (name) => {
      const made = plan(sampleInput(name))
      const at = new Map(made.days.placed.map((placed) => [placed.step, placed]))
      const start = (id: string) => at.get(id)?.startMinute ?? Number.NaN
      const abrading = made.steps.steps.filter(({ kind }) =>
        ['sand', 'sand-between', 'repair'].includes(kind),
      )
      const washed = abrading.filter(({ zone }) => at.has(`wash:${zone}`))
      expect(washed.length).toBeGreaterThan(2)
      for (const step of washed)
        expect(start(step.id)).toBeGreaterThanOrEqual(at.get(`wash:${step.zone}`)?.endMinute ?? Infinity)
      for (const { zones, pinholesAfter } of made.bonds.stacks) {
        if (pinholesAfter === undefined) continue
        for (const zone of zones) {
          const coats = made.steps.steps.filter((step) => step.kind === 'coat' && step.zone === zone)
          const first = coats.findIndex(({ layer }) => layer === pinholesAfter)
          const second = coats[first + 1]
          const filled = at.get(`pinholes:${zone}:${pinholesAfter}`)
          expect(filled?.startMinute).toBeGreaterThan(start(coats[first]?.id ?? ''))
          expect(start(second?.id ?? '')).toBeGreaterThanOrEqual(filled?.endMinute ?? Infinity)
        }
      }
    },
  )
})

const roles = workFields.sheets.fields.role.choices
const olds = [
  'gelcoat',
  'polyester',
  'one-part',
  'two-part polyurethane',
  'acrylic',
  'lacquer',
  'antifouling',
  'unknown',
]

const anyMaterial = fc.record({
  family: fc.constantFrom(...olds),
  role: fc.constantFrom(...roles),
  age: fc.constantFrom('old' as const, 'fresh' as const),
  states: fc.subarray(['silicone', 'wax', 'tacky', 'alcohol']),
})
const anySanding = fc.constantFrom(undefined, 'none' as const, ...grits)
const anyHours = fc.option(fc.double({ min: 0, max: 1e4, noNaN: true }), { nil: undefined })
const anyLayer: fc.Arbitrary<StackLayer> = fc
  .record({
    id: fc.string({ minLength: 1, maxLength: 3 }),
    family: fc.constantFrom(...families, 'unknown'),
    role: fc.constantFrom(...roles),
    shade: fc.constantFrom('light', 'dark'),
    coats: fc.integer({ min: 1, max: 12 }),
    covers: fc.boolean(),
    before: anySanding,
    between: anySanding,
    dryFilmM: fc.double({ min: 1e-6, max: 0.02, noNaN: true }),
    colour: fc.constantFrom('', 'white', 'dark blue', 'Signal red'),
    least: anyHours,
    most: anyHours,
  })
  .map(({ least, most, ...layer }) => ({
    ...layer,
    clocks: {
      ...(least === undefined ? {} : { recoatLeastH: least }),
      ...(most === undefined ? {} : { recoatMostH: most }),
    },
  }))
const anyStack: fc.Arbitrary<Stack> = fc.record({
  ground: fc.array(
    fc.record({
      id: fc.constantFrom('ground', 'crack'),
      material: anyMaterial,
      maybe: fc.array(anyMaterial, { maxLength: 3 }),
      clocks: fc.constant({}),
      colour: fc.constant(''),
      cleared: fc.subarray(['clean and drop test', 'strip']),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  layers: fc.array(anyLayer, { maxLength: 8 }),
  where: fc.constantFrom('above water' as const, 'below water' as const),
  weathers: fc.boolean(),
})

describe('stacks of up to eight layers at random', () => {
  it('are judged without a crash, joint by joint, and every fault is about a layer of theirs', () => {
    fc.assert(
      fc.property(anyStack, (stack) => {
        const { joints, faults } = judge(book, stack)
        const ids = new Set(stack.layers.map(({ id }) => id))
        for (const fault of faults) expect(ids.has(fault.layer)).toBe(true)
        const coats = stack.layers.filter(({ role }) => role !== 'thinner')
        expect(joints.filter(({ kind }) => kind === 'on surface').length).toBeGreaterThanOrEqual(coats.length)
        for (const { bond } of joints)
          if (bond.verdict !== 'untold') expect(bond.says.length).toBeGreaterThan(0)
      }),
      { numRuns: 300 },
    )
  })

  it('are prepared in an order that breaks no rule of order', () => {
    fc.assert(
      fc.property(anyStack, (stack) => {
        for (const { acts, material, bond } of judge(book, stack).joints) {
          if (acts.length === 0 || bond.verdict === 'no' || bond.verdict === 'untold') continue
          expect(outOfOrder(acts, { on: material, rules: book.order })).toEqual([])
        }
      }),
      { numRuns: 300 },
    )
  })
})

describe('a grade of paper', () => {
  it('is read as people write it, a grade between two as the nearer', () => {
    const name = (text: string) => {
      const sanding = sandingOf(text, grits)
      return typeof sanding === 'object' ? sanding.name : sanding
    }
    expect(['P120', 'p 120', '120', 'P125', 'none', '', 'by feel'].map(name)).toEqual([
      'P120',
      'P120',
      '120',
      'P120',
      'none',
      undefined,
      undefined,
    ])
  })
})
