import { describe, expect, it } from 'vitest'
import { hullFromSizes } from '#core/boat'
import { bootStripe, type StripeInput } from '#core/marking'
import { stripeSure } from './stripe-sure.ts'

const made = hullFromSizes({
  form: 'hard-chine',
  lengthOverall: 7.7,
  beam: 2.55,
  freeboardStem: 1.25,
})

describe('how sure the numbers of a stripe are', () => {
  if (!made.ok) throw new Error(JSON.stringify(made))
  const { hull } = made
  const heights = { heightStemM: 0.3, heightLowM: 0.1, heightSternM: 0.2 }
  const input = { ...heights, widthStemM: 0.08, widthLowM: 0.06, widthSternM: 0.06, spacingM: 0.5 }
  const table = bootStripe(hull, input).table!
  const sure = (measured: readonly (keyof StripeInput)[]) =>
    stripeSure({ hull, input, measured: new Set(measured), table })
  const widths = ['widthStemM', 'widthLowM', 'widthSternM'] as const

  it('is worked out where everything was measured', () => {
    const rows = sure(['heightStemM', 'heightLowM', 'heightSternM', ...widths])
    expect(new Set(rows.flatMap((row) => Object.values(row)))).toEqual(new Set(['worked']))
  })
  it('is a guess where a guessed height reaches, and not at the far end', () => {
    const rows = sure(['heightLowM', 'heightSternM', ...widths])
    expect(rows.at(-1)?.lower).toBe('assumed')
    expect(rows[0]?.lower).toBe('worked')
    expect(rows.at(-1)?.girth).toBe('worked')
  })
  it('leaves the lower edge alone where only widths are guessed', () => {
    const rows = sure(['heightStemM', 'heightLowM', 'heightSternM'])
    expect(new Set(rows.map(({ lower }) => lower))).toEqual(new Set(['worked']))
    expect(new Set(rows.map(({ girth }) => girth))).toEqual(new Set(['assumed']))
  })
  it('finds the heights that nobody gave in the stripe itself', () => {
    const { table: bare } = bootStripe(hull, { spacingM: 0.5 })
    const rows = stripeSure({ hull, input: { spacingM: 0.5 }, measured: new Set(), table: bare! })
    expect(new Set(rows.map(({ girth }) => girth))).toEqual(new Set(['assumed']))
    expect(rows.at(-1)?.lower).toBe('assumed')
  })
})
