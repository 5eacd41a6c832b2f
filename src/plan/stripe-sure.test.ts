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
    stripeSure({ measured: new Set(measured), table })
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
  it('agrees with striking the stripe again with the guess half off', () => {
    const moved = bootStripe(hull, { ...input, heightLowM: 0.1 * 1.5 }).table!
    const rows = sure(['heightStemM', 'heightSternM', ...widths])
    // Rows stand at the same places but for the ends, which move with their heights.
    table.rows.slice(1, -1).forEach((row, k) => {
      const off = Math.abs(moved.rows[k + 1]!.lowerM / row.lowerM - 1)
      if (Math.abs(off - 0.1) > 0.02) expect(rows[k + 1]!.lower).toBe(off > 0.1 ? 'assumed' : 'worked')
    })
  })
  it('finds the heights that nobody gave in the stripe itself', () => {
    const { table: bare } = bootStripe(hull, { spacingM: 0.5 })
    const rows = stripeSure({ measured: new Set(), table: bare! })
    expect(new Set(rows.map(({ girth }) => girth))).toEqual(new Set(['assumed']))
    expect(rows.at(-1)?.lower).toBe('assumed')
  })
})
