import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { answeredRaw, planInput, projectRaw, sampleRaw, withCell } from '../../test/support/samples.ts'

const raw = sampleRaw('open-powerboat')
const moneyOf = (document: typeof raw) => plan(planInput(projectRaw(document), undefined)).money!
const before = moneyOf(raw)
const withTerm = (document: typeof raw, key: string, text: string) =>
  withCell(document, 'money', ['terms', key], text)

describe('a quote that was signed', () => {
  it('is kept beside what the plan comes to, and passing it is told at 10 and at 15 parts in a hundred', () => {
    // The shares stand in the trade's rules (section 11, row 24).
    const signedFor = (share: number) =>
      moneyOf(withTerm(raw, 'signed', `EUR ${(before.totalCoins / share / 100).toFixed(2)}`))
    const codes = (share: number) =>
      signedFor(share)
        .notes.map(({ code }) => code)
        .filter((code) => code.startsWith('money.forecast'))
    expect(codes(1)).toEqual([])
    expect(codes(1.09)).toEqual([])
    expect(codes(1.11)).toEqual(['money.forecastOverQuote'])
    expect(codes(1.16)).toEqual(['money.forecastFarOverQuote'])
    expect(signedFor(1).signedCoins).toBe(before.totalCoins)
  })
})

describe('one sum for sundries', () => {
  it('takes the place of every consumable, priced or not', () => {
    const lump = moneyOf(withTerm(raw, 'sundries', 'EUR 250'))
    const lines = lump.lines.filter(({ group }) => group === 'consumables')
    expect(lines).toMatchObject([{ id: 'sundries', quantity: 1, coins: 25_000 }])
    const { consumablePrices: _, ...money } = raw.money as Readonly<Record<string, unknown>>
    const unpriced = { ...raw, money } as typeof raw
    expect(moneyOf(unpriced).complete).toBe(false)
    expect(moneyOf(withTerm(unpriced, 'sundries', 'EUR 250')).complete).toBe(true)
  })
})

describe('a job of twelve answers', () => {
  it('has a pack of everything it buys, so that ten prices make a quote', () => {
    const { stores } = plan(planInput(projectRaw(answeredRaw('open powerboat')), undefined))
    expect(stores.items.length).toBeGreaterThan(3)
    for (const item of stores.items) expect(item.shortM3, item.sheet).toBe(0)
  })
})
