import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readCell, workFields } from '#job'
import { arrowOf, keyStep, lengthText, snapped } from './corner-text.ts'

const field = workFields.corners.fields.offCentre

const read = (text: string) => {
  const reading = readCell(field, text, { currency: undefined })
  if (!reading.ok) throw new Error(`not read: ${text}`)
  return reading.value as { readonly value: number; readonly certainty: string }
}

describe('a place as it is written', () => {
  it.each([
    [1.234, 'metric', false, '1.234 m'],
    [-0.4, 'metric', true, 'about -0.4 m'],
    [-0.0001, 'metric', true, '0 m'],
    [1.2747625, 'us', false, '4 ft 2 3/16 in'],
    [-0.3048, 'us', true, 'about -1 ft'],
    [0.0047625, 'us', false, '3/16 in'],
    [0, 'us', false, '0 in'],
  ] as const)('%d m in %s units, by eye %s, is “%s”', (value, system, about, text) => {
    expect(lengthText(value, { system, about })).toBe(text)
  })

  it('is read again as it was, to the millimetre or half a sixteenth of an inch', () => {
    const places = fc.double({ min: -3.9, max: 7.9, noNaN: true })
    fc.assert(
      fc.property(places, fc.constantFrom('metric', 'us'), fc.boolean(), (value, system, about) => {
        const again = read(lengthText(value, { system, about }))
        expect(Math.abs(again.value - value)).toBeLessThanOrEqual(
          system === 'us' ? 0.0254 / 32 + 1e-9 : 5.001e-4,
        )
        expect(again.certainty).toBe(about && Math.abs(value) >= 5e-4 ? 'assumed' : 'measured')
      }),
    )
  })

  it('moves by every press of a key, in either system', () => {
    for (const system of ['metric', 'us'] as const) {
      for (const fine of [true, false]) {
        const step = keyStep(system, fine)
        const moved = read(
          lengthText(read(lengthText(1, { system, about: false })).value + step, { system, about: false }),
        )
        expect(moved.value).toBeGreaterThan(1 + step / 3)
      }
    }
    expect([keyStep('metric', false), keyStep('metric', true)]).toEqual([0.01, 0.001])
  })
})

describe('an arrow key', () => {
  it('moves a corner the way it points, with the bow right or up', () => {
    expect(arrowOf('ArrowRight', false)).toEqual({ of: 'fromStern', sign: 1 })
    expect(arrowOf('ArrowUp', false)).toEqual({ of: 'offCentre', sign: 1 })
    expect(arrowOf('ArrowUp', true)).toEqual({ of: 'fromStern', sign: 1 })
    expect(arrowOf('ArrowLeft', true)).toEqual({ of: 'offCentre', sign: 1 })
    expect(arrowOf('Enter', true)).toBeUndefined()
    expect(arrowOf('toString', true)).toBeUndefined()
  })
})

describe('a corner that is let go', () => {
  const sheer = [
    [0, 1],
    [6, 1],
  ] as const
  const snap = { perM: 100, sheer, system: 'metric', side: undefined } as const

  it('lies on whole centimetres, on the centreline or on the sheer when it is near', () => {
    expect(snapped([1.2345, 0.4567], snap).map((each) => each.toFixed(3))).toEqual(['1.230', '0.460'])
    expect(snapped([1, 0.06], snap)[1]).toBe(0)
    expect(snapped([1, -0.95], snap)[1]).toBeCloseTo(-1, 9)
    expect(snapped([7, -0.95], snap)[1]).toBeCloseTo(-0.95, 9)
  })

  it('stays on its side where the zone is mirrored', () => {
    expect(snapped([1, -0.5], { ...snap, side: 'port' })[1]).toBe(0)
    expect(snapped([1, 0.5], { ...snap, side: 'starboard' })[1]).toBe(0)
  })
})
