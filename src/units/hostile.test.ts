import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dimensions, read } from './index.ts'

const pieces = [
  ...'0123456789.,:/-−+~?%°\'"′″½⅜²³^()',
  ...['\u2009', '\u202f', '\u00a0', ' ', '\n', '\u0000', '\ud83d', '€', '$', '¥', 'µ', 'μ', 'é', '漢'],
  ...[
    'ft',
    'in',
    'm',
    'mm',
    'oz',
    'fl oz',
    'per',
    'sq ',
    'h',
    'min',
    'C',
    'e',
    'E9',
    'EUR',
    'kr',
    'about',
    'and ',
    'to ',
  ],
]

/** At most 200 characters, from the pieces that mean something and from everything else. */
const hostile = fc
  .oneof(
    fc.array(fc.constantFrom(...pieces), { maxLength: 200 }).map((all) => all.join('')),
    fc.string({ unit: 'binary', maxLength: 200 }),
    fc
      .tuple(fc.constantFrom(...pieces), fc.integer({ min: 1, max: 200 }))
      .map(([piece, n]) => piece.repeat(n)),
    fc
      .tuple(fc.constantFrom(...pieces), fc.constantFrom(...pieces))
      .map(([a, b]) => `1${(a + b).repeat(100)}`),
  )
  .map((text) => text.slice(0, 200))

describe('hostile text', () => {
  it('is a quantity or a fault that points into the text, never an exception', () => {
    fc.assert(
      fc.property(hostile, fc.constantFrom(...dimensions), (text, dimension) => {
        const reading = read(text, dimension, { sign: 'any' })
        if (reading.ok) {
          expect(Number.isFinite(reading.quantity.value)).toBe(true)
          expect(Object.is(reading.quantity.value, -0)).toBe(false)
          return
        }
        const { at, length } = reading.fault.data as { at: number; length: number }
        expect(at).toBeGreaterThanOrEqual(0)
        expect(length).toBeGreaterThanOrEqual(0)
        expect(at + length).toBeLessThanOrEqual(text.length)
        expect(reading.fault.data.got).not.toBeUndefined()
      }),
      { numRuns: 2000, seed: 20270412 },
    )
  })

  it('takes no more than a moment, however it is made', () => {
    const worst = [
      '9'.repeat(200),
      '1,'.repeat(100),
      '1 000'.repeat(40),
      '1/'.repeat(100),
      "'".repeat(200),
      `1 ${'q'.repeat(198)}`,
      `1${' '.repeat(198)}q`,
      '5 ft '.repeat(40),
      `1 ${'a '.repeat(99)}`,
      `1${'.5'.repeat(99)}`,
      '12:'.repeat(66),
      `1 ${'sq '.repeat(66)}`,
    ]
    const took = worst.map((text) => {
      const rounds = Array.from({ length: 10 }, () => {
        const start = performance.now()
        for (const dimension of dimensions) read(text, dimension)
        return (performance.now() - start) / dimensions.length
      })
      return Math.min(...rounds)
    })
    expect(Math.max(...took)).toBeLessThan(slowestMs)
  })

  it('is refused unread beyond 200 characters', () => {
    const reading = read(`${' '.repeat(1e6)}7 m`, 'length')
    expect(reading).toMatchObject({ ok: false, fault: { code: 'units.tooLong', data: { at: 200 } } })
    expect(JSON.stringify(reading).length).toBeLessThan(500)
  })
})

/** Milliseconds, best of ten rounds. Measured well under 0.2; this leaves room for a busy machine, none for a slow pattern. */
const slowestMs = 2
