import { describe, expect, it } from 'vitest'
import { breaks } from './fault.ts'
import { judge } from './judge.ts'
import { readSelectors } from './material.ts'
import { outOfOrder } from './order.ts'
import type { Act, BondBook, BondRule, Grit } from './rule.ts'
import type { Exposed, Stack, StackLayer } from './stack.ts'

const grit = (name: string, sizeM: number): Grit => ({ name, sizeM })
const P80 = grit('P80', 201e-6)
const P120 = grit('P120', 125e-6)
const P220 = grit('P220', 68e-6)
const P320 = grit('P320', 46e-6)
const P400 = grit('P400', 35e-6)

const rule = (under: string, over: string, own: Partial<BondRule> & Pick<BondRule, 'verdict'>): BondRule => ({
  id: `${under} ${over}`,
  aspect: 'bond',
  under: readSelectors(under),
  over: readSelectors(over),
  dissent: false,
  reason: 'because',
  waterWash: false,
  dewax: false,
  tie: [],
  source: 'a guide',
  certainty: 'typical',
  ...own,
})

/** Five rules, enough to see each part of the judge at work. */
const book: BondBook = {
  rules: [
    rule('stone', 'glue primer', {
      verdict: 'yes',
      key: 'always',
      dewax: true,
      grit: { coarsest: P80, finest: P120 },
    }),
    rule('stone', 'gloss', { verdict: 'no', reason: 'slips', tie: readSelectors('glue primer') }),
    rule('chalk', 'glue', { verdict: 'no', reason: 'crumbles', clear: 'strip' }),
    rule('glue', 'gloss', {
      verdict: 'yes',
      key: 'past the window',
      grit: { coarsest: P220, finest: P320 },
    }),
    rule('gloss', 'gloss', {
      verdict: 'yes',
      key: 'always',
      grit: { coarsest: P320, finest: P400 },
    }),
    rule('glue', 'glue', { verdict: 'yes' }),
    rule('glue', 'sun', {
      aspect: 'weather',
      verdict: 'no',
      reason: 'fades',
      tie: readSelectors('gloss finish'),
    }),
  ],
  order: [
    {
      id: 'dewax',
      act: 'abrade',
      needs: 'dewax',
      on: readSelectors('any'),
      age: 'old',
      reason: 'groundIn',
      source: 'a guide',
      certainty: 'typical',
    },
    {
      id: 'solvent',
      act: 'solvent wipe',
      notAfter: 'abrade',
      on: readSelectors('stone laminating resin'),
      reason: 'soft',
      source: 'a guide',
      certainty: 'typical',
    },
  ],
  practice: [
    {
      id: 'gloss',
      of: readSelectors('gloss'),
      coats: 2,
      filmMostM: 50e-6,
      buildMostM: 90e-6,
      source: 'a guide',
      certainty: 'typical',
    },
  ],
  hiding: [
    { id: 'red', colours: ['red'], over: ['white'], coats: 4, source: 'assumed', certainty: 'assumed' },
  ],
  strips: [],
  guesses: [],
}

const onBoat = (family: string, own: Partial<Exposed> = {}): Exposed => ({
  id: 'ground',
  material: { family, role: 'finish', age: 'old', states: [] },
  maybe: [],
  clocks: {},
  colour: '',
  cleared: [],
  ...own,
})

const layer = (family: string, role: string, own: Partial<StackLayer> = {}): StackLayer => ({
  id: `${family} ${role}`,
  family,
  role,
  coats: 1,
  covers: true,
  before: undefined,
  between: undefined,
  clocks: {},
  colour: '',
  ...own,
})

const primer = layer('glue', 'primer', { before: P80 })
const gloss = layer('gloss', 'finish')

const stack = (layers: readonly StackLayer[], own: Partial<Stack> = {}): Stack => ({
  ground: [onBoat('stone')],
  layers,
  where: 'above water',
  weathers: true,
  ...own,
})

const faultsOf = (one: Stack) =>
  judge(book, one).faults.map(({ kind, layer: on, under }) => [kind, on, under])

describe('a stack', () => {
  it('without a fault has a joint for every pair that touches', () => {
    const { joints, faults } = judge(book, stack([primer, { ...gloss, coats: 2, between: P320 }]))
    expect(faults).toEqual([])
    expect(joints.map(({ under, layer: on, kind }) => [under, on, kind])).toEqual([
      ['ground', 'glue primer', 'on surface'],
      ['glue primer', 'gloss finish', 'on surface'],
      ['gloss finish', 'gloss finish', 'between coats'],
    ])
  })

  it('that skips its primer is told what goes between', () => {
    const [fault] = judge(book, stack([gloss])).faults
    expect(fault).toMatchObject({
      kind: 'fails',
      reason: 'slips',
      tie: [{ family: 'glue', role: 'primer' }],
      source: 'a guide',
    })
  })

  it('ends in what the weather may see', () => {
    expect(faultsOf(stack([primer]))).toEqual([['not topcoated', 'glue primer', 'glue primer']])
    expect(faultsOf(stack([primer], { weathers: false }))).toEqual([])
    expect(faultsOf(stack([primer], { where: 'below water' }))).toEqual([])
  })

  it('of nothing is nothing to judge', () => {
    expect(judge(book, stack([]))).toEqual({ joints: [], faults: [] })
  })
})

describe('sanding', () => {
  it('is missed on an old surface, and between coats that always want it', () => {
    const bare = stack([
      { ...primer, before: undefined },
      { ...gloss, coats: 2 },
    ])
    expect(faultsOf(bare)).toEqual([
      ['not sanded', 'glue primer', 'ground'],
      ['between not sanded', 'gloss finish', 'gloss finish'],
    ])
  })

  it('is neither too coarse nor too fine, whatever system the paper is of', () => {
    const sanded = (before: Grit) => faultsOf(stack([primer, { ...gloss, before }])).map(([kind]) => kind)
    expect(sanded(P120)).toEqual(['too coarse'])
    expect(sanded(P220)).toEqual([])
    expect(sanded(grit('220', 66e-6))).toEqual([])
    expect(sanded(P320)).toEqual([])
    expect(sanded(P400)).toEqual(['too fine'])
  })

  it('is not needed inside a window, but the window has to open', () => {
    const within = (recoatLeastH: number, recoatMostH: number) =>
      faultsOf(stack([{ ...primer, clocks: { recoatLeastH, recoatMostH } }, gloss]))
    expect(within(12, 168)).toEqual([])
    expect(within(24, 12)).toEqual([['window never open', 'gloss finish', 'glue primer']])
  })
})

describe('a spot filling', () => {
  it('leaves what is round it to be met by the next layer', () => {
    const filler = layer('chalk', 'filler', { covers: false, before: P80 })
    const open: BondBook = { ...book, rules: [...book.rules, rule('stone', 'chalk', { verdict: 'yes' })] }
    const { joints } = judge(open, stack([filler, primer, gloss]))
    const onto = (id: string) => joints.filter((joint) => joint.layer === id).map(({ under }) => under)
    expect(onto('glue primer')).toEqual(['ground', 'chalk filler'])
    expect(onto('gloss finish')).toEqual(['glue primer'])
  })
})

describe('an unknown surface', () => {
  const maybe = ['stone', 'chalk'].map((family) => ({
    family,
    role: 'finish',
    age: 'old' as const,
    states: [],
  }))
  const ground = [onBoat('unknown', { maybe })]

  it('is judged on each thing that it may be, and the worst of them holds', () => {
    const judged = judge(book, stack([primer, gloss], { ground }))
    expect(judged.joints[0]?.branches.map(({ bond }) => bond.verdict)).toEqual(['yes', 'no'])
    expect(judged.faults).toEqual([
      expect.objectContaining({ kind: 'may fail', on: ['chalk'], clear: ['strip'] }),
    ])
    expect(judged.faults.some(breaks)).toBe(false)
  })

  it('fails when it fails on all of them', () => {
    const all: BondBook = {
      ...book,
      rules: [rule('stone', 'glue', { verdict: 'no' }), ...book.rules.slice(2)],
    }
    expect(judge(all, stack([primer, gloss], { ground })).faults[0]?.kind).toBe('fails')
  })
})

describe('a remedy that is planned', () => {
  it('turns a refusal into something to be minded', () => {
    const ground = [onBoat('chalk', { cleared: ['strip'] })]
    const judged = judge(book, stack([primer, gloss], { ground }))
    expect(judged.joints[0]?.bond.verdict).toBe('care')
    expect(judged.faults).toEqual([expect.objectContaining({ kind: 'only', only: 'strip' })])
  })
})

describe('limits', () => {
  it('hold for one coat and for all of them', () => {
    const thick = (dryFilmM: number, coats: number) =>
      faultsOf(stack([primer, { ...gloss, dryFilmM, coats, between: P320 }])).map(([kind]) => kind)
    expect(thick(45e-6, 2)).toEqual([])
    expect(thick(40e-6, 3)).toEqual(['build over'])
    expect(thick(60e-6, 1)).toEqual(['film over'])
  })

  it('tell how many coats a colour takes', () => {
    const red = { ...gloss, colour: 'Signal red', coats: 2, between: P320 }
    expect(judge(book, stack([primer, red])).faults).toEqual([
      expect.objectContaining({ kind: 'colour shows', coats: 2, wanted: 4 }),
    ])
    expect(faultsOf(stack([primer, { ...red, colour: 'fired clay' }]))).toEqual([])
  })
})

describe('the order of the work', () => {
  const on = (family: string, role: string) => ({
    on: { family, role, age: 'old' as const, states: [] },
    rules: book.order,
  })
  const found = (acts: readonly Act[], where: Parameters<typeof outOfOrder>[1]) =>
    outOfOrder(acts, where).map(({ rule: { id }, at }) => [id, at])

  it('dewaxes before any paper, and finds the paper that came first', () => {
    expect(found(['dewax', 'abrade', 'coat'], on('stone', 'finish'))).toEqual([])
    expect(found(['abrade', 'dewax', 'coat'], on('stone', 'finish'))).toEqual([['dewax', 0]])
  })

  it('keeps solvent off ground laminate, not off what was never ground', () => {
    expect(found(['dewax', 'abrade', 'solvent wipe'], on('stone', 'laminating resin'))).toEqual([
      ['solvent', 2],
    ])
    expect(found(['dewax', 'solvent wipe'], on('stone', 'laminating resin'))).toEqual([])
  })

  it('of every joint breaks no rule', () => {
    const { joints } = judge(book, stack([primer, { ...gloss, coats: 2, between: P320 }]))
    for (const joint of joints.filter(({ acts }) => acts.length > 0))
      expect(outOfOrder(joint.acts, { on: joint.material, rules: book.order })).toEqual([])
  })

  it('finds a wipe among the layers that lies on ground laminate', () => {
    const laminate = [
      onBoat('stone', { material: { family: 'stone', role: 'laminating resin', age: 'old', states: [] } }),
    ]
    const wipe = layer('solvent', 'thinner')
    expect(faultsOf(stack([wipe, primer, gloss], { ground: laminate }))).toEqual([
      ['out of order', 'solvent thinner', 'ground'],
    ])
    expect(faultsOf(stack([wipe, primer, gloss]))).toEqual([])
  })
})

describe('pinholes', () => {
  it('show on the first primer that something goes over', () => {
    expect(judge(book, stack([primer, gloss])).pinholesAfter).toBe('glue primer')
    expect(judge(book, stack([gloss])).pinholesAfter).toBeUndefined()
  })
})
