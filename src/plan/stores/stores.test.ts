import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, sampleWeather, withCell } from '../../../test/support/samples.ts'

const base = sampleRaw('open-powerboat')
const weather = sampleWeather('open-powerboat')

type Cells = readonly (readonly [pack: string, key: string, text: string])[]

/** The plan of the sample with cells of its packs set. */
const planOf = (cells: Cells) =>
  plan(
    planInput(
      projectRaw(
        cells.reduce((raw, [pack, key, text]) => withCell(raw, 'work', ['packs', pack, key], text), base),
      ),
      weather,
    ),
  )
const itemOf = (made: ReturnType<typeof plan>, sheet: string) =>
  made.stores.items.find((item) => item.sheet === sheet)!
const counts = (packs: readonly { readonly pack: string; readonly count: number }[]) =>
  packs.map(({ pack, count }) => [pack, count])

describe('packs', () => {
  const made = planOf([])

  it('bought already are bought no more, and stay in the estimate', () => {
    const wanted = itemOf(made, 'hull-gloss').buy
    const bought = planOf(wanted.map(({ pack, count }) => [pack, 'bought', String(count)] as const))
    const item = itemOf(bought, 'hull-gloss')
    expect(wanted.length).toBeGreaterThan(0)
    expect(counts(item.bought)).toEqual(counts(wanted))
    expect(item.buy).toEqual([])
    expect(bought.money?.totalCoins).toBe(made.money?.totalCoins)
  })

  it('of an unknown batch are not put beside new ones where the colour is seen', () => {
    const item = itemOf(made, 'stripe')
    expect(item.fromStock).toEqual([])
    expect(
      made.notes.find(({ code, data }) => code === 'stores.otherBatch' && data.sheet === 'stripe')?.data,
    ).toMatchObject({
      pack: 'stripe-1',
    })
  })

  it('of the batch that was bought go on beside it', () => {
    const item = itemOf(
      planOf([
        ['stripe-1', 'bought', '1'],
        ['stripe-1', 'batch', 'K7'],
      ]),
      'stripe',
    )
    expect(counts(item.fromStock)).toEqual([['stripe-1', 1]])
    expect(item.buy).toEqual([])
  })

  it('that were opened are nothing to buy, and are used while they keep', () => {
    const opened = (date: string) =>
      planOf([
        ['resin-4', 'opened', date],
        ['resin-4', 'inStock', '1'],
      ])
    const item = itemOf(opened('2027-04-01'), 'resin')
    expect(counts(item.fromStock)).toEqual([['resin-4', 1]])
    expect(item.buy.map(({ pack }) => pack)).not.toContain('resin-4')
  })

  it('whose parts are written are reckoned by part', () => {
    const kits = planOf([
      ['high-build-2', 'partA', '1.25 L'],
      ['high-build-2', 'partB', '1 L'],
      ['high-build-5', 'partA', '2.5 L'],
      ['high-build-5', 'partB', '2 L'],
    ])
    const item = itemOf(kits, 'high-build')
    const [a = 0, b = 0] = item.leftoverPartsM3
    // Four parts of hardener for five of base where one to one is mixed: hardener decides, base is left over.
    expect(a).toBeGreaterThan(b + 0.1 * item.needM3)
    expect(kits.notes.filter(({ code }) => code === 'stores.packParts').length).toBe(2)
  })
})

describe('running short', () => {
  it('costs the coat of the largest zone once more, with its sanding', () => {
    const made = planOf([])
    const short = itemOf(made, 'hull-gloss').shortSide!
    const own = made.steps.steps.filter((step) => step.zone === short.zone && step.sheet === 'hull-gloss')
    expect(own.length).toBeGreaterThan(0)
    expect(short.hours).toBeGreaterThan(own[0]!.hours)
  })
})
