import { describe, expect, it } from 'vitest'
import { cup } from './cup.ts'

/** Volume of the drawn cone up to a height over its bottom, from the width of its walls; any scale. */
const volume = (level: number, width: number, height: number): number => {
  const radius = (at: number) => (width / 2) * (0.74 + 0.26 * (at / height))
  const [low, high] = [radius(0), radius(level)]
  return (level * (low * low + low * high + high * high)) / 3
}

describe('cup', () => {
  it('draws each level where the part would stand in a cup of that shape', () => {
    const [width, height] = [15, 26]
    const { levels } = cup([{ share: 0.4 }, { share: 0.2 }], { width, height })
    const whole = volume(height, width, height)
    const [first, second] = levels.map(([, y]) => volume(height - y, width, height) / whole)
    expect(first).toBeCloseTo(0.4, 6)
    expect(second).toBeCloseTo(0.6, 6)
  })

  it('fills to the rim and no further', () => {
    const { levels } = cup([{ share: 1 }], { width: 15, height: 26 })
    expect(levels[0]![1]).toBeCloseTo(0, 6)
    expect(cup([{ share: 2 }], { width: 15, height: 26 }).levels[0]![1]).toBeGreaterThanOrEqual(0)
  })
})
