import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { isRefused, judge } from '#core/coating'
import { plan, suggestBuildUps } from '#plan'
import {
  planInput,
  projectRaw,
  type SampleName,
  sampleInput,
  sampleRaw,
  withCell,
} from '../../../test/support/samples.ts'
import { bondBook } from '../read-bonds.ts'

const suggestFor = (name: SampleName, wish: { readonly family?: string } = {}) => {
  const input = sampleInput(name)
  const { work, money } = input
  return suggestBuildUps({ plan: plan(input), work, prices: money?.prices, catalogue, wish })
}
const groupOf = (found: ReturnType<typeof suggestFor>, zone: string) => {
  const group = found.groups.find(({ zones }) => zones.includes(zone))
  if (!group) throw new Error(`no group has ${zone}`)
  return group
}

describe('the sample of a powerboat', () => {
  const twoPart = groupOf(suggestFor('open-powerboat', { family: 'two-part polyurethane' }), 'topsides-port')

  it('finds by itself the tie coat that leads from old gelcoat and vinylester filler to two-part gloss', () => {
    const [first] = twoPart.suggestions
    expect(first?.steps.map(({ layer }) => [layer.family, layer.role])).toEqual([
      ['epoxy', 'tie coat'],
      ['two-part polyurethane', 'finish'],
    ])
    expect(first?.stack.ground.map(({ material }) => `${material.family} ${material.role}`)).toEqual([
      'gelcoat finish',
      'vinylester filler',
    ])
    expect(first?.stack.layers[0]?.before).toMatchObject({ name: 'P120' })
  })

  it('says why the two shortcuts fail that tempt most', () => {
    const told = twoPart.shortcuts.map(({ stack, faults }) => ({
      layers: stack.layers.map(({ id }) => id),
      reasons: faults.map((fault) => [fault.under, 'reason' in fault ? fault.reason : fault.kind]),
    }))
    expect(told).toEqual([
      {
        layers: ['hull-gloss'],
        reasons: [
          ['ground', 'solventSafeBase'],
          ['crazing-port', 'styreneLeft'],
        ],
      },
      { layers: ['stripe', 'hull-gloss'], reasons: [['stripe', 'lifts']] },
    ])
  })

  it('holds, by the judge, and weighs one-part that is easier against two-part that lasts', () => {
    const any = groupOf(suggestFor('open-powerboat'), 'topsides-port')
    const book = bondBook(catalogue)
    expect(any.suggestions.length).toBeGreaterThan(1)
    for (const { stack } of any.suggestions) expect(judge(book, stack).faults.filter(isRefused)).toEqual([])
    const by = (criterion: 'cost' | 'life' | 'days') =>
      any.suggestions.find(({ best }) => best.includes(criterion))
    expect(by('days')?.steps.at(-1)?.layer.family).toBe('one-part')
    expect(by('life')?.steps.at(-1)?.layer.family).toBe('two-part polyurethane')
    expect(by('life')!.worth.lifeHours).toBeGreaterThan(by('days')!.worth.lifeHours)
    expect(by('life')!.worth.layers).toBeGreaterThan(by('days')!.worth.layers)
  })

  it('comes first in the colour that is planned, and tells of another', () => {
    const { suggestions } = groupOf(suggestFor('open-powerboat'), 'topsides-port')
    const colours = suggestions.map(({ steps }) => steps.at(-1)!.offer.colour)
    expect(colours[0]).toBe('pale teal')
    expect(colours).toContain('dark blue')
    for (const { steps, only } of suggestions)
      expect(only.some(({ code }) => code === 'suggest.otherColour')).toBe(
        steps.at(-1)!.offer.colour !== 'pale teal',
      )
  })

  it('shows no build-up twice where only one colour is left over', () => {
    const group = groupOf(suggestFor('open-powerboat', { family: 'two-part polyurethane' }), 'topsides-port')
    const paths = group.suggestions.map(({ steps }) => steps.map(({ offer }) => offer.id).join(' + '))
    expect(paths.length).toBeGreaterThan(2)
    expect(new Set(paths).size).toBe(paths.length)
  })

  it('sands between the coats of gloss, even where they would bond unsanded', () => {
    const { suggestions } = groupOf(suggestFor('open-powerboat'), 'topsides-port')
    for (const { steps } of suggestions) expect(steps.at(-1)!.layer.between).toMatchObject({ name: 'P400' })
  })

  it('has the non-skid fields on the paint of the deck', () => {
    const fields = groupOf(suggestFor('open-powerboat'), 'panels-sole')
    expect(fields.wish.role).toBe('non-skid')
    expect(fields.suggestions[0]?.steps.map(({ layer }) => layer.id)).toEqual(['non-skid'])
  })
})

describe('a coating that nobody knows', () => {
  it('is stripped first, since it may be lacquer', () => {
    const found = groupOf(suggestFor('cruiser-topsides'), 'port')
    expect(found.suggestions.length).toBeGreaterThan(0)
    for (const { strip, stripHours } of found.suggestions) {
      expect(strip?.id).toBe('oldPaint')
      expect(stripHours).toBeGreaterThan(1)
    }
  })
})

describe('a finish that no sheet is', () => {
  it('is said to be missing', () => {
    expect(groupOf(suggestFor('deck-only', { family: 'gelcoat' }), 'foredeck').none).toEqual({
      why: 'no finish',
    })
  })

  it('that nothing leads to is explained by the nearest miss', () => {
    const input = sampleInput('open-powerboat')
    const without = {
      ...input.work,
      sheets: input.work.sheets.filter(({ id }) => !['undercoat', 'high-build'].includes(id)),
    }
    const poor = { ...input, work: without }
    const { groups } = suggestBuildUps({
      plan: plan(poor),
      work: without,
      prices: input.money?.prices,
      catalogue,
      wish: { family: 'two-part polyurethane' },
    })
    const group = groups.find(({ zones }) => zones.includes('topsides-port'))
    expect(group?.suggestions).toEqual([])
    expect(group?.none?.miss?.worth.misses).toBe(1)
    expect(group?.none?.miss?.faults[0]).toMatchObject({
      kind: 'fails',
      reason: 'solventSafeBase',
      tie: expect.arrayContaining([{ family: 'epoxy', role: 'primer' }]),
    })
  })
})

describe('a moulded pattern that stays', () => {
  const coinsOn = (texture: string) => {
    const raw = withCell(sampleRaw('open-powerboat'), 'work', ['zones', 'side-decks', 'texture'], texture)
    const input = planInput(projectRaw(raw), sampleInput('open-powerboat').weather)
    const { work, money } = sampleInput('open-powerboat')
    const found = suggestBuildUps({
      plan: plan(input),
      work: { ...work, zones: input.work.zones },
      prices: money?.prices,
      catalogue,
      wish: {},
    })
    const group = groupOf(found, 'side-decks')
    return group.suggestions[0]!.worth.coins / group.areaM2
  }

  it('takes half as much paint again in the suggestions too', () => {
    expect(coinsOn('moulded non-skid') / coinsOn('smooth')).toBeCloseTo(1.5, 2)
  })
})
