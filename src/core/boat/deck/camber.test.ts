import { describe, expect, it } from 'vitest'
import { camberFactor } from './camber.ts'

/** Arc of a circle over its chord, k = rise ÷ width: an independent shape of the same beam. */
const circle = (k: number): number => {
  const radius = (1 / 4 + k * k) / (2 * k)
  return 2 * radius * Math.asin(1 / (2 * radius))
}

/** Straight over the parabola in very many short chords: sagitta falls with their square. */
const chords = (k: number): number => {
  const n = 20_000
  const rise = (x: number) => k * (1 - 4 * x * x)
  return Array.from({ length: n }, (_, i) => {
    const [a, b] = [i / n - 0.5, (i + 1) / n - 0.5]
    return Math.hypot(b - a, rise(b) - rise(a))
  }).reduce((sum, one) => sum + one, 0)
}

describe('a cambered deck', () => {
  it.each([0.01, 0.03, 0.1, 0.25, 0.5])('with a rise of %f of its width is as long as its arc', (k) => {
    expect(camberFactor(k)).toBeCloseTo(chords(k), 8)
  })

  it('is flat without a rise, and goes over into the series for a small one without a step', () => {
    expect(camberFactor(0)).toBe(1)
    expect(camberFactor(1e-4)).toBeCloseTo(camberFactor(0.999999e-4), 10)
    expect(camberFactor(-0.05)).toBe(camberFactor(0.05))
  })

  it('is within a thousandth of a beam struck as a circle, up to 1 in 10', () => {
    for (const k of [0.02, 0.05, 0.1]) expect(Math.abs(camberFactor(k) / circle(k) - 1)).toBeLessThan(1e-3)
    expect(Math.abs(camberFactor(0.4) / circle(0.4) - 1)).toBeGreaterThan(1e-3)
  })

  it('grows with the rise', () => {
    const factors = [0, 1e-5, 1e-4, 1e-3, 0.01, 0.1, 0.4].map(camberFactor)
    expect([...factors].sort((a, b) => a - b)).toEqual(factors)
  })
})
