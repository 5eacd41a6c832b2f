import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { paperJob, paperPlan } from '../../../test/support/paper-plan.ts'
import { testPress } from '../../../test/support/paper-press.ts'
import { type SampleName, sampleInput } from '../../../test/support/samples.ts'
import { createKit } from '../kit.ts'
import { createSetter } from '../setter.ts'
import { dateAfter, quoteSheets } from './quote.ts'
import { quoteLines } from './quote-lines.ts'

const money = paperPlan.money!
const sumOf = (lines: ReturnType<typeof quoteLines>) => lines.reduce((sum, line) => sum + line.coins, 0)

describe('quoteLines', () => {
  it('adds up to the net sum of the plan to the coin, margin in the price of what is bought', () => {
    const lines = quoteLines(money)
    expect(sumOf(lines)).toBe(money.netCoins)
    expect(lines.map((line) => [line.kind, line.coins])).toEqual([
      ['labour', 63550],
      ['materials', 14580],
      ['consumables', 475],
      ['cost', 42000],
    ])
  })

  it.each<SampleName>(['open-powerboat', 'deck-only', 'cruiser-topsides'])(
    'adds up for the sample %s',
    (name) => {
      const estimate = plan(sampleInput(name)).money!
      expect(sumOf(quoteLines(estimate))).toBe(estimate.netCoins)
    },
  )

  it('adds up whatever the sums and the margin are', () => {
    const coins = fc.integer({ min: 0, max: 10_000_000 })
    fc.assert(
      fc.property(coins, coins, coins, coins, (labour, materials, consumables, marginCoins) => {
        const estimate = {
          ...money,
          lines: money.lines.filter((line) => line.group !== 'costs'),
          subtotals: { labour, materials, consumables, costs: 0, changes: 0 },
          marginCoins,
        }
        expect(sumOf(quoteLines(estimate))).toBe(labour + materials + consumables + marginCoins)
      }),
    )
  })
})

describe('the quote', async () => {
  const setter = createSetter(await testPress())
  const textsOf = (estimate: typeof money): string =>
    quoteSheets(
      createKit({ plan: { ...paperPlan, money: estimate }, job: paperJob, page: 'A4' }, setter),
      estimate,
    )
      .pages.flat()
      .flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
      .join(' ')
      .replaceAll(/[\u2009\u202f]/g, ' ')

  it('shows total, tax, deposit and the prices of hidden damage', () => {
    const text = textsOf(money)
    // A figure of money is set as one piece of digits with its sign apart.
    for (const shown of ['1507.56', '301.51', '452.27', '240.00', 'per 0.1 m²', 'Engine and electrics.'])
      expect(text).toContain(shown)
  })

  it('keeps the margin, the rates and the prices of packs to the shop', () => {
    const text = textsOf(money)
    for (const hidden of ['25.09', '62.00', '42.50', '79.00', '20 %']) expect(text).not.toContain(hidden)
  })

  it('is a draft while a price is missing', () => {
    expect(textsOf(money)).not.toContain('Draft')
    expect(textsOf({ ...money, complete: false })).toContain('Draft, not an offer yet')
  })
})

describe('dateAfter', () => {
  it('counts days over the end of a month and of a leap February', () => {
    expect(dateAfter('2028-02-20', 30)).toBe('2028-03-21')
    expect(dateAfter('2027-12-31', 1)).toBe('2028-01-01')
  })
})
